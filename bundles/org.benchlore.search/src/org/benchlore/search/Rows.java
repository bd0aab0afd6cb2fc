// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.util.Optional;

import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.search.IndexSearcher;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;

/** Finds the row of a document. Rows come from the catalogue, so that nothing stored need be read for them. */
final class Rows {

    private Rows() {
    }

    static Optional<Row> of(IndexSearcher searcher, int document, Catalogue catalogue) throws IOException {
        var leaves = searcher.getIndexReader().leaves();
        var leaf = leaves.get(ReaderUtil.subIndex(document, leaves));
        var paths = DocValues.getBinary(leaf.reader(), Fields.PATH);
        if (!paths.advanceExact(document - leaf.docBase)) {
            return Optional.empty();
        }
        return catalogue.entry(paths.binaryValue().utf8ToString()).flatMap(Catalogue.Entry::row);
    }
}
