// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.FSDirectory;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index as a cache: always up to date, never the only place of anything, owned by one process. */
class IndexTest {

    @TempDir
    Path folder;

    private Path root;
    private Library library;

    @BeforeEach
    void write() throws Exception {
        root = Files.createDirectories(folder.resolve("library"));
        Files.writeString(root.resolve("shop.xmi"),
                "<book:Shop xmlns:book=\"urn:benchlore:book:1\" id=\"shop\" formatVersion=\"1\" title=\"Shop\"/>");
        part("seal", "Shaft seal");
        library = Library.open(root, folder.resolve("cache"), new NullProgressMonitor());
    }

    @AfterEach
    void close() {
        library.close();
    }

    @Test
    void whatChangedWhileItWasClosedIsFound() throws Exception {
        open(true).close();
        part("gasket", "Cover gasket");
        Files.delete(root.resolve("parts/seal.xmi"));
        library.refresh(new NullProgressMonitor());
        try (var index = open(true)) {
            assertEquals(1, count(index, "gasket"));
            assertEquals(0, count(index, "seal"));
        }
    }

    @Test
    void aChangeIsFoundAtOnce() throws Exception {
        try (var index = open(true)) {
            part("gasket", "Cover gasket");
            index.update(library.refresh(new NullProgressMonitor()), new NullProgressMonitor());
            assertEquals(1, count(index, "gasket"));
            Files.delete(root.resolve("parts/seal.xmi"));
            index.update(library.refresh(new NullProgressMonitor()), new NullProgressMonitor());
            assertEquals(0, count(index, "seal"));
        }
    }

    @Test
    void aJobIsFoundByTheNewNameOfItsPart() throws Exception {
        Files.createDirectories(root.resolve("jobs/2026"));
        Files.writeString(root.resolve("jobs/2026/job-2026-x-aaaa.xmi"), "<book:JobRecord xmlns:book=\"urn:benchlore:book:1\""
                + " id=\"job-2026-x-aaaa\" formatVersion=\"1\" title=\"Job\"><rounds id=\"r\"><removed>"
                + "<part href=\"../../parts/seal.xmi#seal\"/></removed></rounds></book:JobRecord>");
        library.refresh(new NullProgressMonitor());
        try (var index = open(true)) {
            assertEquals(2, count(index, "seal"));
            part("seal", "Radial lip ring");
            index.update(library.refresh(new NullProgressMonitor()), new NullProgressMonitor());
            assertEquals(2, count(index, "radial"));
        }
    }

    @Test
    void aDamagedIndexIsBuiltAgainAndSaysSo() throws Exception {
        var random = new Random(11);
        for (int i = 0; i < 25; i++) {
            open(true).close();
            var damage = damage(random);
            try (var index = open(i % 2 == 0)) {
                assertEquals(1, count(index, "seal"), damage);
                assertTrue(index.notice().isPresent(), damage);
            }
        }
    }

    /** Cuts, empties, scrambles or removes one of the index's files. */
    private String damage(Random random) throws IOException {
        try (var files = Files.list(indexFolder())) {
            var all = files.filter(file -> !file.endsWith(IndexWriter.WRITE_LOCK_NAME)).sorted().toList();
            var file = all.get(random.nextInt(all.size()));
            var bytes = Files.readAllBytes(file);
            switch (random.nextInt(3)) {
                case 0 -> Files.write(file, java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)));
                case 1 -> {
                    int place = random.nextInt(bytes.length);
                    bytes[place] ^= (byte) (1 + random.nextInt(255));
                    Files.write(file, bytes);
                }
                default -> Files.delete(file);
            }
            return file.getFileName() + " of " + bytes.length + " bytes is now "
                    + (Files.exists(file) ? Files.size(file) : "gone");
        }
    }

    @Test
    void anIndexOfAnotherVersionIsBuiltAgain() throws Exception {
        try (var directory = FSDirectory.open(indexFolder());
                var writer = new IndexWriter(directory, new IndexWriterConfig())) {
            writer.addDocument(new org.apache.lucene.document.Document());
            writer.setLiveCommitData(java.util.Map.of("stamp", "1.0 old").entrySet());
            writer.commit();
        }
        try (var index = open(true)) {
            assertEquals(1, count(index, "seal"));
            assertTrue(index.notice().orElseThrow().contains("another version"));
        }
    }

    @Test
    void whileAnotherOwnsTheIndexNewerFilesAreLaidOverItsLastCommit() throws Exception {
        try (var owner = open(true)) {
            part("gasket", "Cover gasket");
            part("seal", "Radial lip ring");
            library.refresh(new NullProgressMonitor());
            try (var other = open(true)) {
                assertEquals(1, count(other, "gasket"));
                assertEquals(1, count(other, "radial"));
                assertEquals(0, count(other, "shaft"));
                assertFalse(other.notice().isPresent());
            }
            assertEquals(1, count(owner, "shaft"));
        }
    }

    @Test
    void whatTheOwnerCommitsIsReadByOthersWithoutALayer() throws Exception {
        try (var owner = open(true)) {
            part("gasket", "Cover gasket");
            owner.update(library.refresh(new NullProgressMonitor()), new NullProgressMonitor());
            owner.commit();
            try (var reader = new IndexFolder(indexFolder(), Analyzers.all()).openLastCommit()) {
                assertEquals(1, reader.docFreq(new org.apache.lucene.index.Term(Fields.ALL, "gasket")));
            }
        }
    }

    @Test
    void aChangedTextDoesNotIndexAnewWhatRefersToIt() throws Exception {
        part("gasket", "Cover gasket");
        library.refresh(new NullProgressMonitor());
        var file = root.resolve("parts/gasket.xmi");
        Files.writeString(file, Files.readString(file).replace("title=", "maker=\"Anyone\" title="));
        var changes = library.refresh(new NullProgressMonitor());
        assertEquals(java.util.Set.of("parts/gasket.xmi"), changes.changed());
        assertEquals(java.util.Set.of(), changes.renamed());
        part("gasket", "Lid gasket");
        assertEquals(java.util.Set.of("parts/gasket.xmi"), library.refresh(new NullProgressMonitor()).renamed());
    }

    @Test
    void lookingUpLeavesTheIndexToOthers() throws Exception {
        open(true).close();
        try (var reader = open(false); var owner = open(true)) {
            part("gasket", "Cover gasket");
            owner.update(library.refresh(new NullProgressMonitor()), new NullProgressMonitor());
            assertEquals(1, count(owner, "gasket"));
            assertEquals(1, count(reader, "seal"));
        }
        try (var next = open(false)) {
            assertEquals(1, count(next, "gasket"));
        }
    }

    @Test
    void withoutAFolderToWriteEverythingIsInMemory() throws Exception {
        Files.writeString(indexFolder(), "a file where the folder should be");
        try (var index = open(true)) {
            assertEquals(1, count(index, "seal"));
        }
    }

    @Test
    void buildingAnewKeepsEverything() throws Exception {
        try (var index = open(true)) {
            assertEquals(2, index.rebuild(new NullProgressMonitor()));
            assertEquals(1, count(index, "seal"));
        }
    }

    private Path indexFolder() {
        return folder.resolve("index");
    }

    private SearchIndex open(boolean own) throws IOException {
        return SearchIndex.open(library, indexFolder(), own, new NullProgressMonitor());
    }

    private static long count(SearchIndex index, String text) {
        return index.find(Query.of(text + " ")).total();
    }

    private void part(String id, String title) throws IOException {
        Files.createDirectories(root.resolve("parts"));
        Files.writeString(root.resolve("parts/" + id + ".xmi"), "<book:Part xmlns:book=\"urn:benchlore:book:1\" id=\"" + id
                + "\" formatVersion=\"1\" title=\"" + title + "\"/>");
    }
}
