// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.LockObtainFailedException;
import org.apache.lucene.util.Version;

/**
 * The folder of an index in the user's cache. An index that is damaged, of another version of Lucene or with other
 * fields is thrown away: it is a cache.
 */
final class IndexFolder {

    private static final String STAMP = "stamp";

    private final Path folder;
    private final Analyzer analyzer;

    IndexFolder(Path folder, Analyzer analyzer) {
        this.folder = folder;
        this.analyzer = analyzer;
    }

    /** What was found in the folder. */
    enum State { NEW, READY, OTHER_VERSION, DAMAGED }

    /** An index opened for writing, and the state in which it was found. */
    record Opened(IndexWriter writer, State state) {
    }

    /**
     * Opens the index for writing, empty if what was there cannot be used.
     *
     * @throws LockObtainFailedException if another process owns it
     * @throws IOException if the folder cannot be written
     */
    Opened open() throws IOException {
        Files.createDirectories(folder);
        var directory = FSDirectory.open(folder);
        var state = state(directory);
        if (state == State.DAMAGED) {
            clear(directory);
        }
        return new Opened(new IndexWriter(directory, config(state == State.READY)), state);
    }

    /** Opens the last commit for reading beside the process that owns the index. */
    DirectoryReader openLastCommit() throws IOException {
        var reader = DirectoryReader.open(FSDirectory.open(folder));
        try {
            checkSums(reader);
            if (!isCurrent(reader)) {
                throw new IOException("The index has another version");
            }
            return reader;
        } catch (IOException | IllegalArgumentException e) {
            reader.close();
            throw e;
        }
    }

    /** Reads the whole index once, so that damage shows here and not in the middle of a search. */
    private static void checkSums(DirectoryReader reader) throws IOException {
        for (var leaf : reader.leaves()) {
            leaf.reader().checkIntegrity();
        }
    }

    Map<String, String> stamp() {
        return Map.of(STAMP, Version.LATEST + " " + Fields.VERSION);
    }

    private State state(Directory directory) throws IOException {
        if (!DirectoryReader.indexExists(directory)) {
            return directory.listAll().length == 0 || onlyLock(directory) ? State.NEW : State.DAMAGED;
        }
        try (var reader = DirectoryReader.open(directory)) {
            checkSums(reader);
            return isCurrent(reader) ? State.READY : State.OTHER_VERSION;
        } catch (IOException | IllegalArgumentException e) {
            return State.DAMAGED;
        }
    }

    private static boolean onlyLock(Directory directory) throws IOException {
        return directory.listAll().length == 1 && directory.listAll()[0].equals(IndexWriter.WRITE_LOCK_NAME);
    }

    private boolean isCurrent(DirectoryReader reader) throws IOException {
        return stamp().get(STAMP).equals(reader.getIndexCommit().getUserData().get(STAMP));
    }

    private IndexWriterConfig config(boolean keep) {
        return new IndexWriterConfig(analyzer).setOpenMode(keep ? OpenMode.APPEND : OpenMode.CREATE);
    }

    /** Lucene's writer stumbles over files that should be there, so a damaged index is removed by hand. */
    private static void clear(Directory directory) throws IOException {
        try (var lock = directory.obtainLock(IndexWriter.WRITE_LOCK_NAME)) {
            lock.ensureValid();
            for (var file : directory.listAll()) {
                if (!file.equals(IndexWriter.WRITE_LOCK_NAME)) {
                    directory.deleteFile(file);
                }
            }
        }
    }
}
