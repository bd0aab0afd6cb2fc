// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The middle and the upper end of many values, by nearest rank.
 *
 * @param p50 half of the values are no greater
 * @param p99 99 in 100 of the values are no greater
 */
record Spread(double p50, double p99) {

    static Spread of(double[] values) {
        var sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(at(sorted, 0.50), at(sorted, 0.99));
    }

    private static double at(double[] sorted, double share) {
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }

    /** Returns the median of each over the rounds. */
    static Spread median(List<Spread> rounds) {
        return new Spread(median(rounds, Spread::p50), median(rounds, Spread::p99));
    }

    /** Returns the median of something over the rounds; of an even number, the mean of the two in the middle. */
    static <T> double median(List<T> rounds, ToDoubleFunction<T> value) {
        var sorted = rounds.stream().mapToDouble(value).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
