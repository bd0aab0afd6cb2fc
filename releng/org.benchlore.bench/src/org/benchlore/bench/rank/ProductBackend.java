// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.util.List;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;
import org.benchlore.bench.product.PlainEntries;

/** The product's own way from what was typed to a list of hits. */
record ProductBackend(PlainEntries entries) implements Backend {

    static final String NAME = "Benchlore";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public void index(List<TextEntry> documents) throws IOException, BenchException {
        entries.add(documents);
    }

    @Override
    public List<Ranked> search(String text, int depth) {
        return entries.search(text, depth);
    }

    @Override
    public void close() throws IOException {
        entries.close();
    }
}
