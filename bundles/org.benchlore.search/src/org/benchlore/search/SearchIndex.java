// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermQuery;
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
    private static final int WARM_ROWS = 10;
    private static final int WARM_LETTERS = 12;

    private final CodeForms codeForms = new CodeForms();
    private final Library library;
    private final Analyzer analyzer;
    private final IndexBackend backend;
    private final Optional<String> notice;
    private final LibraryGlossary glossary;
    private final Documents documents;

    private SearchIndex(Library library, Analyzer analyzer, IndexBackend backend, Optional<String> notice) {
        this.library = library;
        this.analyzer = analyzer;
        this.backend = backend;
        this.notice = notice;
        this.glossary = new LibraryGlossary(library);
        this.documents = new Documents(library);
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
        return search(shared -> {
            var searcher = Patience.over(shared);
            return new Finder(searcher, library.catalogue(), analyzer, query, grouping(searcher),
                    backend::current).results();
        });
    }

    /**
     * Says why rows are hits. It takes longer than finding them: ask for those that are seen.
     *
     * @param query the query that found them
     * @param rows rows of its hits
     * @return a passage for each row, in the same order
     */
    public List<Passage> passages(Query query, List<Row> rows) {
        return search(searcher -> {
            var passages = new Passages(searcher, analyzer,
                    grouping(searcher).of(Typed.of(analyzer, query.text())), documents::about);
            var found = new ArrayList<Passage>();
            for (var row : rows) {
                found.add(passages.of(row, backend.current(new TermQuery(new Term(Fields.PATH, row.path())))));
            }
            return List.copyOf(found);
        });
    }

    /**
     * Finds notes, procedures, documents and jobs that belong to an element: they refer to it, it refers to them, or
     * they share codes, parts or machines.
     *
     * @param row the element's row
     * @param limit most rows, at least 1
     * @return rows, the closest first
     */
    public List<Row> related(Row row, int limit) {
        return search(searcher -> {
            var found = searcher.search(backend.current(Related.query(row)), limit);
            var rows = new ArrayList<Row>();
            for (var hit : found.scoreDocs) {
                Rows.of(searcher, hit.doc, library.catalogue()).ifPresent(rows::add);
            }
            return List.copyOf(rows);
        });
    }

    /**
     * Runs the ways of a search once, so that the first one that somebody waits for is as quick as the others.
     */
    public void warmUp() {
        var first = library.catalogue().rows().limit(WARM_ROWS).toList();
        for (var row : first) {
            var title = row.title();
            for (int end = 1; end <= Math.min(title.length(), WARM_LETTERS); end++) {
                find(Query.of(title.substring(0, end)));
            }
            var whole = Query.of(title + " zzqx").withCounts();
            passages(whole, find(whole).hits().stream().map(Hit::row).limit(WARM_ROWS).toList());
        }
    }

    private Grouping grouping(IndexSearcher searcher) {
        return new Grouping(analyzer, glossary.words(), new CodeLookup(library.catalogue(), codeForms), new Vocabulary(searcher));
    }

    private <T> T search(IndexBackend.Search<T> search) {
        try {
            return backend.search(search);
        } catch (IOException e) {
            throw new UncheckedIOException("The search index cannot be read", e);
        }
    }

    /**
     * Takes in changes of the library: the changed files, and files that are found by names in them
     * which changed.
     *
     * @param changes what changed
     * @param monitor shows progress by files; may cancel
     * @throws IOException if the index cannot be written
     */
    public void update(Changes changes, IProgressMonitor monitor) throws IOException {
        var paths = new TreeSet<>(changes.changed());
        paths.addAll(changes.removed());
        changes.renamed().forEach(path -> library.catalogue().referringTo(path).map(Row::path).forEach(paths::add));
        backend.update(paths, monitor);
    }

    /**
     * Puts on the disk what was taken in since the last time, so that other processes read it and the next start has
     * less to do. It takes some ten milliseconds: call it when there is time, not on a save.
     *
     * @throws IOException if the index cannot be written
     */
    public void commit() throws IOException {
        backend.commit();
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
