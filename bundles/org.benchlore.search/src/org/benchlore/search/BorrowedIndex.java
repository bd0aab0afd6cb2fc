// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.MultiReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.util.BytesRef;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;

/**
 * The last commit of an index that another process owns, with newer files laid over it in memory. Without such a
 * commit, everything is in memory.
 */
final class BorrowedIndex implements IndexBackend {

    private final Library library;
    private final Documents documents;
    private final DirectoryReader below;
    private final IndexWriter over;
    private final Set<String> replaced = new HashSet<>();
    private IndexReader reader;

    /** Opens it over a commit, or over nothing if {@code below} is null. */
    BorrowedIndex(Library library, Analyzer analyzer, DirectoryReader below, IProgressMonitor monitor)
            throws IOException {
        this.library = library;
        this.documents = new Documents(library);
        this.below = below;
        this.over = new IndexWriter(new ByteBuffersDirectory(), new IndexWriterConfig(analyzer));
        if (below == null) {
            rebuild(monitor);
        } else {
            var difference = Layers.between(below, library.catalogue());
            var paths = new HashSet<>(difference.stale());
            paths.addAll(difference.gone());
            update(paths, monitor);
        }
    }

    @Override
    public synchronized <T> T search(Search<T> search) throws IOException {
        return search.with(new IndexSearcher(reader));
    }

    @Override
    public synchronized Query current(Query query) {
        if (below == null || replaced.isEmpty()) {
            return query;
        }
        var old = new TermInSetQuery(Fields.PATH, replaced.stream().map(BytesRef::new).toList());
        var notReplaced = new BooleanQuery.Builder().add(new MatchAllDocsQuery(), Occur.MUST).add(old, Occur.MUST_NOT);
        var current = new BooleanQuery.Builder().add(notReplaced.build(), Occur.SHOULD)
                .add(new TermQuery(new Term(Fields.LAID_OVER, "yes")), Occur.SHOULD);
        return new BooleanQuery.Builder().add(query, Occur.MUST).add(current.build(), Occur.FILTER).build();
    }

    @Override
    public synchronized void update(Collection<String> paths, IProgressMonitor monitor) throws IOException {
        for (var path : paths) {
            if (monitor.isCanceled()) {
                throw new OperationCanceledException();
            }
            var fresh = library.catalogue().entry(path).map(documents::of).orElse(List.of());
            Layers.replace(over, path, Layers.markedAsLaidOver(fresh));
            replaced.add(path);
        }
        reopen();
    }

    @Override
    public synchronized void rebuild(IProgressMonitor monitor) throws IOException {
        over.deleteAll();
        update(library.catalogue().entries().stream().map(Entry::path).toList(), monitor);
    }

    private void reopen() throws IOException {
        var top = DirectoryReader.open(over);
        reader = below == null ? top : new MultiReader(new IndexReader[] {below, top}, false);
    }

    /** The index belongs to another process, which commits by itself. */
    @Override
    public void commit() {
    }

    @Override
    public synchronized void close() throws IOException {
        reader.close();
        over.close();
        if (below != null) {
            below.close();
        }
    }
}
