// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.util.List;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;
import org.benchlore.bench.peers.PlainLucene;

/** Plain Lucene: any of the words, BM25. */
record LuceneBackend(String name, PlainLucene lucene) implements Backend {

    @Override
    public void index(List<TextEntry> documents) throws IOException {
        lucene.add(documents);
    }

    @Override
    public List<Ranked> search(String text, int depth) throws IOException {
        return lucene.search(lucene.anyOf(text), depth);
    }

    @Override
    public void close() throws IOException {
        lucene.close();
    }
}
