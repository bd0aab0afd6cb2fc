// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * What people said of the documents for one query.
 *
 * @param grades grade by document id; 1 or more is relevant, a document that is missing is not
 */
public record Judgements(Map<String, Integer> grades) {

    /** Keeps a copy. */
    public Judgements {
        grades = Map.copyOf(grades);
    }

    int grade(String id) {
        return grades.getOrDefault(id, 0);
    }

    List<Integer> of(Ranking ranking) {
        return ranking.ids().stream().map(this::grade).toList();
    }

    Collection<Integer> all() {
        return grades.values();
    }

    /**
     * Counts what should be found.
     *
     * @return number of relevant documents
     */
    public int relevant() {
        return (int) grades.values().stream().filter(grade -> grade >= 1).count();
    }
}
