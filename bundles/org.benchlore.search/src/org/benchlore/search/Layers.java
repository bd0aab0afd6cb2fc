// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.DocIdSetIterator;
import org.benchlore.store.Catalogue;

/** Compares what is in an index with the library's files. */
final class Layers {

    private Layers() {
    }

    /**
     * What an index lacks.
     *
     * @param stale paths to be indexed again
     * @param gone paths to be removed
     */
    record Difference(Set<String> stale, Set<String> gone) {
    }

    static Difference between(IndexReader index, Catalogue catalogue) throws IOException {
        var indexed = hashes(index);
        var stale = new HashSet<String>();
        for (var entry : catalogue.entries()) {
            var known = indexed.remove(entry.path());
            if (entry.row().isPresent() ? !entry.hash().equals(known) : known != null) {
                stale.add(entry.path());
            }
        }
        return new Difference(stale, indexed.keySet());
    }

    private static Map<String, String> hashes(IndexReader index) throws IOException {
        var hashes = new HashMap<String, String>();
        for (var leaf : index.leaves()) {
            var paths = DocValues.getBinary(leaf.reader(), Fields.PATH);
            var values = DocValues.getBinary(leaf.reader(), Fields.HASH);
            var live = leaf.reader().getLiveDocs();
            while (paths.nextDoc() != DocIdSetIterator.NO_MORE_DOCS) {
                if ((live == null || live.get(paths.docID())) && values.advanceExact(paths.docID())) {
                    hashes.put(paths.binaryValue().utf8ToString(),
                            values.binaryValue().utf8ToString());
                }
            }
        }
        return hashes;
    }

    /** Puts a file's documents in the place of its older ones; no documents means that the file is gone. */
    static void replace(IndexWriter writer, String path, Collection<Document> documents) throws IOException {
        var old = new Term(Fields.PATH, path);
        if (documents.isEmpty()) {
            writer.deleteDocuments(old);
        } else {
            writer.updateDocuments(old, documents);
        }
    }

    static Collection<Document> markedAsLaidOver(Collection<Document> documents) {
        documents.forEach(document -> document.add(new StringField(Fields.LAID_OVER, "yes", Field.Store.NO)));
        return documents;
    }
}
