// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import java.util.Random;

/**
 * Fisher's paired randomisation test: how often would chance alone make the means of two rankings differ as much, if
 * for each query it were a toss which of the two values belongs to which ranking? Two-sided; the arrangement that was
 * seen counts as one of the trials, so that p is never 0. The same seed gives the same p.
 *
 * @param trials how many times the signs are tossed
 * @param seed seed of the tosses
 */
public record RandomisationTest(int trials, long seed) {

    /** Sums of the same numbers in another order differ in their last digits. */
    private static final double ROUNDING = 1e-12;

    /**
     * Compares two rankings.
     *
     * @param one a value for each query
     * @param other the other's values for the same queries in the same order
     * @return p, above 0 and up to 1
     */
    public double p(double[] one, double[] other) {
        if (one.length != other.length) {
            throw new IllegalArgumentException(one.length + " values cannot be paired with " + other.length);
        }
        var differences = new double[one.length];
        for (int i = 0; i < one.length; i++) {
            differences[i] = one[i] - other[i];
        }
        return share(differences);
    }

    private double share(double[] differences) {
        double seen = 0;
        for (double difference : differences) {
            seen += difference;
        }
        var random = new Random(seed);
        int asGreat = 1;
        for (int i = 0; i < trials; i++) {
            if (Math.abs(toss(differences, random)) >= Math.abs(seen) - ROUNDING) {
                asGreat++;
            }
        }
        return (double) asGreat / (trials + 1);
    }

    private static double toss(double[] differences, Random random) {
        double sum = 0;
        for (double difference : differences) {
            sum += random.nextBoolean() ? difference : -difference;
        }
        return sum;
    }
}
