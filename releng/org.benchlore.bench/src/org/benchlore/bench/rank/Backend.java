// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.io.IOException;
import java.util.List;

import org.benchlore.bench.BenchException;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;

/** An engine that ranks plain texts. */
interface Backend extends AutoCloseable {

    String name();

    /** Takes all documents in; called once, before any search. */
    void index(List<TextEntry> documents) throws IOException, BenchException;

    /** Ranks documents for a text as somebody typed it: at most {@code depth} of them, none for a hopeless text. */
    List<Ranked> search(String text, int depth) throws IOException;

    @Override
    void close() throws IOException;
}
