// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.benchlore.bench.Table;
import org.benchlore.bench.metrics.RandomisationTest;
import org.benchlore.bench.rank.Scores.Measure;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What was reached on one set, as a table or as JSON; the first of the scores is the one the others are tested against. */
final class RankReport {

    private static final RandomisationTest TEST = new RandomisationTest(10_000, 20260101L);

    private final RankingSet set;
    private final List<Scores> scores;

    RankReport(RankingSet set, List<Scores> scores) {
        this.set = set;
        this.scores = scores;
    }

    /** Returns p of the difference in nDCG@10 between a peer and the product. */
    double p(Scores peer) {
        return TEST.p(peer.values().get(Measure.NDCG), product().values().get(Measure.NDCG));
    }

    private Scores product() {
        return scores.get(0);
    }

    String text() {
        var table = new Table("", "nDCG@10", "MAP", "R@10", "MRR", "nDCG less product", "p");
        for (var one : scores) {
            boolean own = one == product();
            table.add(one.name(), mean(one, Measure.NDCG), mean(one, Measure.MAP), mean(one, Measure.RECALL),
                    mean(one, Measure.MRR), own ? "" : signed(one.mean(Measure.NDCG) - product().mean(Measure.NDCG)),
                    own ? "" : String.format(Locale.ROOT, "%.4f", p(one)));
        }
        return set.name() + ": " + set.documents().size() + " documents, " + set.queries().size()
                + " queries, " + RankRun.DEPTH + " hits asked for\n" + table;
    }

    private static String mean(Scores scores, Measure measure) {
        return String.format(Locale.ROOT, "%.4f", scores.mean(measure));
    }

    private static String signed(double difference) {
        return String.format(Locale.ROOT, "%+.4f", difference);
    }

    JsonObject json() {
        var json = new JsonObject();
        json.addProperty("set", set.name());
        json.addProperty("documents", set.documents().size());
        json.addProperty("depth", RankRun.DEPTH);
        json.addProperty("trials", TEST.trials());
        var ids = new JsonArray();
        set.queries().forEach(query -> ids.add(query.id()));
        json.add("queries", ids);
        var backends = new JsonArray();
        scores.forEach(one -> backends.add(json(one)));
        json.add("backends", backends);
        return json;
    }

    private JsonObject json(Scores one) {
        var json = new JsonObject();
        json.addProperty("name", one.name());
        Arrays.stream(Measure.values()).forEach(measure -> json.addProperty(measure.label(), one.mean(measure)));
        if (one != product()) {
            json.addProperty("p", p(one));
        }
        var each = new JsonArray();
        Arrays.stream(one.values().get(Measure.NDCG)).forEach(each::add);
        json.add("nDCG@10 of each query", each);
        return json;
    }
}
