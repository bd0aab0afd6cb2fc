// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.IProgressMonitor;

/**
 * Finds elements of a library. The index lies in the user's cache, is brought up to date when it is opened and is
 * built anew by itself if it is damaged or of another version. Safe to use from several threads.
 */
public final class SearchIndex implements AutoCloseable {

    /** So many changed files are laid over in memory before the index on the disk is brought up to date. */
    private static final int FEW_FILES = 20;

    private final Library library;
    private final Analyzer analyzer;
    private final IndexBackend backend;
    private final Optional<String> notice;

    private SearchIndex(Library library, Analyzer analyzer, IndexBackend backend, Optional<String> notice) {
        this.library = library;
        this.analyzer = analyzer;
        this.backend = backend;
        this.notice = notice;
    }

    /**
     * Opens the index of a library. If another process owns it, or the folder cannot be written, what is there is
     * read and newer files are laid over it in memory.
     *
     * @param library an open library
     * @param folder folder of the index, in the user's cache
     * @param own true to own the index while it is open; false to look something up in what is there, and to own it
     *            only for as long as it takes to build what is missing
     * @param monitor shows progress by files; may cancel
     * @return the index, up to date
     * @throws IOException if not even an index in memory can be made
     */
    public static SearchIndex open(Library library, Path folder, boolean own, IProgressMonitor monitor)
            throws IOException {
        var analyzer = Analyzers.all();
        var place = new IndexFolder(folder, analyzer);
        var last = own ? null : lastCommit(place);
        if (last != null && isNearlyCurrent(last, library)) {
            return borrowed(library, analyzer, last, monitor);
        }
        closeQuietly(last);
        try {
            var opened = place.open();
            var owned = OwnedIndex.upToDate(library, place, opened, monitor);
            return new SearchIndex(library, analyzer, owned, notice(opened.state()));
        } catch (IOException e) {
            log("The index is owned by another process or cannot be written", e);
            return borrowed(library, analyzer, lastCommit(place), monitor);
        }
    }

    private static SearchIndex borrowed(Library library, Analyzer analyzer, DirectoryReader last,
            IProgressMonitor monitor) throws IOException {
        return new SearchIndex(library, analyzer, new BorrowedIndex(library, analyzer, last, monitor), Optional.empty());
    }

    private static boolean isNearlyCurrent(DirectoryReader last, Library library) throws IOException {
        var difference = Layers.between(last, library.catalogue());
        return difference.stale().size() + difference.gone().size() <= FEW_FILES;
    }

    private static void closeQuietly(DirectoryReader reader) throws IOException {
        if (reader != null) {
            reader.close();
        }
    }

    private static void log(String what, Exception e) {
        System.getLogger(SearchIndex.class.getName()).log(System.Logger.Level.DEBUG, what, e);
    }

    private static Optional<String> notice(IndexFolder.State state) {
        return switch (state) {
            case DAMAGED -> Optional.of("The search index was damaged and has been built again; nothing was lost.");
            case OTHER_VERSION -> Optional.of("The search index was of another version and has been built again.");
            case NEW, READY -> Optional.empty();
        };
    }

    private static DirectoryReader lastCommit(IndexFolder place) {
        try {
            return place.openLastCommit();
        } catch (IOException | IllegalArgumentException e) {
            log("There is no commit to read", e);
            return null;
        }
    }

    /**
     * Tells what happened while the index was opened, where a person should know.
     *
     * @return one plain sentence, or empty
     */
    public Optional<String> notice() {
        return notice;
    }

    /**
     * Finds elements. Whatever was typed, it does not throw for it.
     *
     * @param query what is looked for
     * @return the hits, best first; {@link Results#NONE} if nothing fits
     */
    public Results find(Query query) {
        var typed = new TypedQuery(analyzer, library.catalogue(), query.text());
        if (typed.isEmpty()) {
            return Results.NONE;
        }
        try {
            return backend.search(searcher -> {
                var all = run(searcher, typed, query, true);
                return all.total() > 0 ? all : run(searcher, typed, query, false);
            });
        } catch (IOException e) {
            throw new UncheckedIOException("The search index cannot be read", e);
        }
    }

    private Results run(IndexSearcher searcher, TypedQuery typed, Query query, boolean all) throws IOException {
        var asked = typed.query(all);
        var top = searcher.search(backend.current(filtered(asked, query)), query.limit());
        if (top.totalHits.value == 0) {
            return Results.NONE;
        }
        var hits = new HitMaker(library, analyzer, searcher, asked).hits(top.scoreDocs);
        return new Results(hits, top.totalHits.value, !all);
    }

    private org.apache.lucene.search.Query filtered(org.apache.lucene.search.Query asked, Query query) {
        var filtered = new BooleanQuery.Builder().add(asked, Occur.MUST);
        query.kind().ifPresent(kind -> filtered.add(new TermQuery(new Term(Fields.KIND, kind.name())), Occur.FILTER));
        query.machine().ifPresent(machine -> filtered.add(new TermInSetQuery(Fields.MACHINE,
                List.of(new BytesRef(path(machine)), new BytesRef(Fields.NO_MACHINE))), Occur.FILTER));
        return filtered.build();
    }

    private String path(String machine) {
        return library.catalogue().byId(machine).map(Row::path).orElse(machine);
    }

    /**
     * Takes in changes of the library: the changed files, and files that mention them by title.
     *
     * @param changes what changed
     * @param monitor shows progress by files; may cancel
     * @throws IOException if the index cannot be written
     */
    public void update(Changes changes, IProgressMonitor monitor) throws IOException {
        var paths = new TreeSet<>(changes.changed());
        paths.addAll(changes.removed());
        changes.changed().forEach(path -> library.catalogue().referringTo(path).map(Row::path).forEach(paths::add));
        backend.update(paths, monitor);
    }

    /**
     * Builds the index anew.
     *
     * @param monitor shows progress by files; may cancel
     * @return how many files are in it
     * @throws IOException if the index cannot be written
     */
    public int rebuild(IProgressMonitor monitor) throws IOException {
        backend.rebuild(monitor);
        Collection<?> entries = library.catalogue().entries();
        return entries.size();
    }

    @Override
    public void close() throws IOException {
        backend.close();
        analyzer.close();
    }
}
