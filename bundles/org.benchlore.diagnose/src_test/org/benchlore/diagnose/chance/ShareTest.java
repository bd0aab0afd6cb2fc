// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareTest {

    @Test
    void casesMoveAFigureByWhatItIsWorth() {
        assertEquals(3.3 / 50, new Share(3, 40).after(0.03, 10), 1e-12);
        assertEquals(0.03, new Share(0, 0).after(0.03, 10), 1e-12);
    }

    @Test
    void thereAreNoMoreCasesThanThereWere() {
        assertThrows(IllegalArgumentException.class, () -> new Share(2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Share(-1, 1));
        assertEquals(1, new Share(1, 1).cases());
    }

    /** Table of the normal distribution, from memory: 1.2816, 1.6449, 1.9600, 2.5758. */
    @ParameterizedTest
    @CsvSource({"80, 1.2816", "90, 1.6449", "95, 1.9600", "99, 2.5758"})
    void deviationsAreThoseOfTheTable(double percent, double z) {
        assertEquals(z, Share.deviation(percent), 5e-5);
    }

    /** Wilson's interval for 10 of 100 at 95 %: 0.0552 to 0.1744, from memory, and by the formula. */
    @Test
    void theBandIsWilsons() {
        assertArrayEquals(new double[] {0.0552, 0.1744}, Share.band(0.1, 100, 95), 5e-5);
    }
}
