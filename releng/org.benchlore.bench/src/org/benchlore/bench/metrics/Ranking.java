// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Found documents, best first. Equal scores are ordered by id, the greater first, as trec_eval does (from memory): so
 * that no engine gains by the order in which it happens to hold its documents.
 *
 * @param ids ids of the documents, each once
 */
public record Ranking(List<String> ids) {

    private static final Comparator<Ranked> BEST_FIRST = Comparator.comparingDouble(Ranked::score).reversed()
            .thenComparing(Comparator.comparing(Ranked::id).reversed());

    /**
     * Orders what was found.
     *
     * @param found documents with their scores, in any order
     * @return the ranking
     */
    public static Ranking of(Collection<Ranked> found) {
        return new Ranking(found.stream().sorted(BEST_FIRST).map(Ranked::id).distinct().toList());
    }

    Ranking top(int cut) {
        return new Ranking(ids.subList(0, Math.min(cut, ids.size())));
    }
}
