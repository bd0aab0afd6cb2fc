// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.rank;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Measures;
import org.benchlore.bench.metrics.Ranking;

/**
 * What one backend reached on a set.
 *
 * @param name the backend
 * @param values by measure, one value for each query in the order of the set
 */
record Scores(String name, Map<Measure, double[]> values) {

    /** The measures that are printed. */
    enum Measure {
        NDCG("nDCG@10"), MAP("MAP"), RECALL("R@10"), MRR("MRR");

        private final String label;

        Measure(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    private static final int CUT = 10;

    static Scores of(String name, RankingSet set, List<Ranking> rankings) {
        return new Scores(name, Arrays.stream(Measure.values())
                .collect(Collectors.toMap(measure -> measure, measure -> values(measure, set, rankings))));
    }

    private static double[] values(Measure measure, RankingSet set, List<Ranking> rankings) {
        var values = new double[rankings.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(measure, set, set.queries().get(i), rankings.get(i));
        }
        return values;
    }

    private static double value(Measure measure, RankingSet set, TextEntry query, Ranking ranking) {
        var judgements = set.judgements().get(query.id());
        return switch (measure) {
            case NDCG -> Measures.ndcg(ranking, judgements, CUT);
            case MAP -> Measures.averagePrecision(ranking, judgements);
            case RECALL -> Measures.recall(ranking, judgements, CUT);
            case MRR -> Measures.reciprocalRank(ranking, judgements);
        };
    }

    double mean(Measure measure) {
        return Arrays.stream(values.get(measure)).average().orElse(0);
    }
}
