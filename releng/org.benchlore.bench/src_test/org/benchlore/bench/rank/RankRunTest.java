// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Judgements;
import org.benchlore.bench.rank.Scores.Measure;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** All engines on a set so plain that every one of them must rank it right, and what is printed of it. */
class RankRunTest {

    private RankingSet set;
    private List<Scores> scores;

    @BeforeEach
    void run() throws Exception {
        var documents = new ArrayList<TextEntry>();
        for (var word : List.of("gasket", "bearing", "coolant", "filter", "sensor", "hose")) {
            documents.add(new TextEntry("d-" + word, "renew the " + word));
        }
        var queries = List.of(new TextEntry("q1", "bearing"), new TextEntry("q2", "hose \"OR NOT ("));
        set = new RankingSet("plain", documents, queries, Map.of("q1", new Judgements(Map.of("d-bearing", 1)),
                "q2", new Judgements(Map.of("d-hose", 1, "d-never-there", 1))));
        scores = new RankRun(new PrintWriter(Writer.nullWriter())).run(set);
    }

    @Test
    void theProductIsFirstAndFourPeersFollow() {
        assertEquals(List.of("Benchlore", "Lucene Standard", "Lucene English", "FTS5 unicode61", "FTS5 porter"),
                scores.stream().map(Scores::name).toList());
    }

    @Test
    void everyEngineRanksThePlainSetRight() {
        for (var one : scores) {
            assertEquals(1, one.values().get(Measure.NDCG)[0], 1e-15, one.name());
            assertEquals(1, one.mean(Measure.MRR), 1e-15, one.name());
            assertEquals(0.75, one.mean(Measure.RECALL), 1e-15, one.name() + " cannot find what is not there");
        }
    }

    @Test
    void theTableHasALineForEachEngine() {
        var lines = new RankReport(set, scores).text().lines().toList();
        assertEquals("plain: 6 documents, 2 queries, 100 hits asked for", lines.get(0));
        assertTrue(lines.get(2).matches("Benchlore +0\\.\\d{4} +0\\.7500 +0\\.7500 +1\\.0000"), lines.get(2));
        assertTrue(lines.get(6).matches("FTS5 porter .* \\+0\\.0000 +1\\.0000"), lines.get(6));
    }

    @Test
    void theJsonHoldsTheValuesOfEachQuery() {
        var json = new RankReport(set, scores).json();
        assertEquals(2, json.getAsJsonArray("queries").size());
        var peer = json.getAsJsonArray("backends").get(1).getAsJsonObject();
        assertEquals(1.0, peer.get("p").getAsDouble());
        assertEquals(2, peer.getAsJsonArray("nDCG@10 of each query").size());
    }
}
