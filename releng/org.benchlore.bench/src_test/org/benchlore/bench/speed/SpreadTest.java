// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.speed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Percentiles by nearest rank and medians of rounds. */
class SpreadTest {

    @Test
    void percentilesAreValuesThatOccurred() {
        var values = IntStream.rangeClosed(1, 200).mapToDouble(i -> 201 - i).toArray();
        assertEquals(new Spread(100, 198), Spread.of(values));
    }

    @Test
    void aSingleValueIsBoth() {
        assertEquals(new Spread(3, 3), Spread.of(new double[] {3}));
    }

    @Test
    void theMedianIsTakenOfEachByItself() {
        assertEquals(new Spread(2, 8), Spread.median(List.of(new Spread(1, 9), new Spread(2, 7), new Spread(3, 8))));
    }

    @Test
    void anEvenNumberOfRoundsGivesTheMeanOfTheMiddleTwo() {
        assertEquals(2.5, Spread.median(List.of(4.0, 1.0, 2.0, 3.0), value -> value));
    }
}
