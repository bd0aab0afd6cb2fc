// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.metrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The paired randomisation test against the exact sum over all signs. */
class RandomisationTestTest {

    private static final RandomisationTest TEST = new RandomisationTest(20_000, 7);

    @Test
    void equalRankingsDoNotDiffer() {
        var values = new double[] {0.1, 0.5, 0.9};
        assertEquals(1, TEST.p(values, values));
    }

    /** Only all signs as seen, and all against, are as great: 2 of 2 to the power of n. */
    @ParameterizedTest
    @ValueSource(ints = {3, 5, 8})
    void aConstantLeadHasTheExactP(int queries) {
        var one = IntStream.range(0, queries).mapToDouble(i -> i * 0.01 + 0.2).toArray();
        var other = IntStream.range(0, queries).mapToDouble(i -> i * 0.01).toArray();
        assertEquals(2 / Math.pow(2, queries), TEST.p(one, other), 0.01);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void itComesNearTheSumOverAllSigns(long seed) {
        var random = new Random(seed);
        var one = random.doubles(10).toArray();
        var other = random.doubles(10).map(value -> value * 0.8).toArray();
        assertEquals(exact(one, other), TEST.p(one, other), 0.015);
    }

    private static double exact(double[] one, double[] other) {
        int as = 0;
        double seen = sum(one, other, 0);
        for (int signs = 0; signs < 1 << one.length; signs++) {
            as += Math.abs(sum(one, other, signs)) >= Math.abs(seen) - 1e-12 ? 1 : 0;
        }
        return as / Math.pow(2, one.length);
    }

    private static double sum(double[] one, double[] other, int signs) {
        return IntStream.range(0, one.length).mapToDouble(i -> (one[i] - other[i]) * ((signs >> i & 1) == 0 ? 1 : -1)).sum();
    }

    @Test
    void itDoesNotMatterWhichIsFirst() {
        var one = new double[] {0.3, 0.9, 0.4, 0.8};
        var other = new double[] {0.2, 0.7, 0.5, 0.1};
        assertEquals(TEST.p(one, other), TEST.p(other, one));
    }

    @Test
    void aGreatDifferenceIsNeverQuiteImpossible() {
        var one = IntStream.range(0, 200).mapToDouble(i -> 1).toArray();
        assertEquals(1.0 / 20_001, TEST.p(one, new double[200]));
    }

    /** Of differences that are noise, about one in twenty has p of .05 or less: here at most 24 and at least 2 of 200. */
    @Test
    void noiseIsRarelyTakenForADifference() {
        var random = new Random(11);
        var quick = new RandomisationTest(400, 5);
        long taken = IntStream.range(0, 200)
                .filter(i -> quick.p(random.doubles(30).toArray(), random.doubles(30).toArray()) <= 0.05).count();
        assertTrue(taken >= 2 && taken <= 24, () -> taken + " of 200");
    }

    @Test
    void valuesThatCannotBePairedAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> TEST.p(new double[2], new double[3]));
    }
}
