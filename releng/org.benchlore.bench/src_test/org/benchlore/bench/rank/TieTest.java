// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranking;
import org.benchlore.bench.peers.Fts5;
import org.benchlore.bench.peers.PlainLucene;
import org.benchlore.bench.product.PlainEntries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents of the same words are ties for every engine, so that all must put them in the same order. */
class TieTest {

    @TempDir
    Path folder;

    @Test
    void tiesComeInTheSameOrderFromEveryEngine() throws Exception {
        var documents = IntStream.of(3, 11, 7, 1, 20).mapToObj(i -> new TextEntry("d" + i, "worn seal")).toList();
        var expected = new Ranking(List.of("d7", "d3", "d20", "d11", "d1"));
        var engines = List.of(new ProductBackend(new PlainEntries(folder.resolve("product"))),
                new LuceneBackend("lucene", new PlainLucene(new StandardAnalyzer(), folder.resolve("lucene"))),
                new Fts5Backend("fts5", new Fts5("unicode61", folder.resolve("fts5"))));
        for (var engine : engines) {
            try (engine) {
                engine.index(documents);
                assertEquals(expected, Ranking.of(engine.search("seal", 10)), engine.name());
            }
        }
    }
}
