// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Discounted cumulated gain (DCG) of a list of grades, and its share of the best that was possible (nDCG).
 *
 * @param gain what a grade is worth
 * @param discount what is left of it at a rank
 */
public record CumulatedGain(Gain gain, Discount discount) {

    /** Linear gain, discounted from the first rank on: what the bench prints. */
    public static final CumulatedGain USUAL = new CumulatedGain(Gain.LINEAR, Discount.FROM_THE_FIRST);

    /**
     * Adds up the first grades.
     *
     * @param grades grades in the order of the ranking, 0 for what is not relevant
     * @param cut how many ranks count, at least 1
     * @return the sum
     */
    public double of(List<Integer> grades, int cut) {
        double sum = 0;
        for (int i = 0; i < Math.min(cut, grades.size()); i++) {
            sum += gain.of(grades.get(i)) * discount.at(i + 1);
        }
        return sum;
    }

    /**
     * Adds up all judged grades in the best order there is.
     *
     * @param judged every judged grade, found or not
     * @param cut how many ranks count
     * @return the greatest sum a ranking can have
     */
    public double ideal(Collection<Integer> judged, int cut) {
        return of(judged.stream().sorted(Comparator.reverseOrder()).toList(), cut);
    }

    /**
     * Compares a ranking with the best one.
     *
     * @param grades grades in the order of the ranking
     * @param judged every judged grade, found or not
     * @param cut how many ranks count
     * @return 0 to 1; 0 where nothing is relevant
     */
    public double normalised(List<Integer> grades, Collection<Integer> judged, int cut) {
        double best = ideal(judged, cut);
        return best == 0 ? 0 : of(grades, cut) / best;
    }
}
