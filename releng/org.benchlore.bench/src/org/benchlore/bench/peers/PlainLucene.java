// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.peers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.QueryBuilder;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;

/** Lucene in its plainest use: one analysed and stored field, BM25 with its usual settings. */
public final class PlainLucene implements AutoCloseable {

    /** The field with all text. */
    public static final String TEXT = "text";

    private static final String ID = "id";

    private final Analyzer analyzer;
    private final FSDirectory directory;
    private final IndexWriter writer;
    private final SearcherManager searchers;

    /**
     * Opens an index, making it where there is none.
     *
     * @param analyzer how text becomes words; closed with this
     * @param folder where the index lies
     * @throws IOException if it cannot be written
     */
    public PlainLucene(Analyzer analyzer, Path folder) throws IOException {
        this.analyzer = analyzer;
        this.directory = FSDirectory.open(folder);
        this.writer = new IndexWriter(directory, new IndexWriterConfig(analyzer).setOpenMode(OpenMode.CREATE_OR_APPEND));
        this.searchers = new SearcherManager(writer, null);
    }

    /**
     * Adds entries, commits, and makes them visible.
     *
     * @param entries the entries
     * @throws IOException if the index cannot be written
     */
    public void add(List<TextEntry> entries) throws IOException {
        for (var entry : entries) {
            writer.addDocument(document(entry));
        }
        writer.commit();
        searchers.maybeRefreshBlocking();
    }

    /**
     * Puts an entry in the place of the one with the same id and makes it visible, without a commit.
     *
     * @param entry the entry
     * @throws IOException if the index cannot be written
     */
    public void update(TextEntry entry) throws IOException {
        writer.updateDocument(new Term(ID, entry.id()), document(entry));
        searchers.maybeRefreshBlocking();
    }

    private static Document document(TextEntry entry) {
        var document = new Document();
        document.add(new StringField(ID, entry.id(), Field.Store.YES));
        document.add(new TextField(TEXT, entry.whole(), Field.Store.YES));
        return document;
    }

    /**
     * Makes a query for any of the words of a text.
     *
     * @param text words
     * @return the query; it finds nothing where no word is left
     */
    public Query anyOf(String text) {
        var query = new QueryBuilder(analyzer).createBooleanQuery(TEXT, text);
        return query == null ? new MatchNoDocsQuery() : query;
    }

    /**
     * Makes a query for words that stand together.
     *
     * @param text words
     * @return the query; it finds nothing where no word is left
     */
    public Query phrase(String text) {
        var query = new QueryBuilder(analyzer).createPhraseQuery(TEXT, text);
        return query == null ? new MatchNoDocsQuery() : query;
    }

    /**
     * Searches and reads the stored text of every hit, as a list of hits needs it.
     *
     * @param query the query
     * @param limit most hits
     * @return the hits, best first
     * @throws IOException if the index cannot be read
     */
    public List<Ranked> search(Query query, int limit) throws IOException {
        var searcher = searchers.acquire();
        try {
            var stored = searcher.storedFields();
            var found = new ArrayList<Ranked>();
            for (ScoreDoc hit : searcher.search(query, limit).scoreDocs) {
                found.add(new Ranked(stored.document(hit.doc).get(ID), hit.score));
            }
            return found;
        } finally {
            searchers.release(searcher);
        }
    }

    /**
     * Searches and reads nothing: the least that a search can cost.
     *
     * @param query the query
     * @param limit most hits
     * @return how many hits it returns
     * @throws IOException if the index cannot be read
     */
    public int searchOnly(Query query, int limit) throws IOException {
        var searcher = searchers.acquire();
        try {
            return searcher.search(query, limit).scoreDocs.length;
        } finally {
            searchers.release(searcher);
        }
    }

    @Override
    public void close() throws IOException {
        searchers.close();
        writer.close();
        directory.close();
        analyzer.close();
    }
}
