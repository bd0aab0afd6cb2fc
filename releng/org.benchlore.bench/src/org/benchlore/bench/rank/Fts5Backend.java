// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.util.List;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;
import org.benchlore.bench.peers.Fts5;

/** SQLite's full-text search: any of the words, bm25(). */
record Fts5Backend(String name, Fts5 table) implements Backend {

    @Override
    public void index(List<TextEntry> documents) throws IOException {
        table.add(documents);
    }

    @Override
    public List<Ranked> search(String text, int depth) throws IOException {
        return table.search(Fts5.anyOf(text), depth);
    }

    @Override
    public void close() throws IOException {
        table.close();
    }
}
