// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WearTest {

    /** Nelson, Applied Life Data Analysis, pp. 69-70, as quoted by a web page: shape 2, scale 13, age 6.5. Published. */
    @Test
    void nelsonsExampleIsMet() {
        var wear = new Wear(2, 13);
        assertEquals(0.162651, wear.failsWithin(6.5, 2), 5e-7);
        assertEquals(0.472367, 1 - wear.failsWithin(6.5, 6.5), 5e-7);
    }

    /** real-statistics.com: shape 2.2, scale 1120. Published and computed. */
    @Test
    void thePublishedSurvivalIsMet() {
        var wear = new Wear(2.2, 1120);
        assertEquals(0.620643, wear.reaches(800), 5e-7);
        assertEquals(0.111725, wear.reaches(1600), 5e-7);
        assertEquals(0.180015, 1 - wear.failsWithin(800, 800), 5e-7);
    }

    /** Shape 2.5, scale 120, age 60, the next 30: computed in the reference values. */
    @Test
    void theNextThirtyAtSixtyAreMet() {
        assertEquals(0.26682, new Wear(2.5, 120).failsWithin(60, 30), 5e-6);
    }

    /** Against Apache Commons Statistics 1.1. */
    @ParameterizedTest
    @CsvSource({"0.7, 400, 10, 30", "1, 200, 50, 1", "2.5, 4000, 2500, 800", "4, 9, 0, 3", "3, 150, 140, 0"})
    void itIsTheWeibullDistribution(double shape, double scale, double age, double next) {
        var other = WeibullDistribution.of(shape, scale);
        var wear = new Wear(shape, scale);
        assertEquals(other.survivalProbability(age), wear.reaches(age), 1e-12);
        assertEquals(1 - other.survivalProbability(age + next) / other.survivalProbability(age),
                wear.failsWithin(age, next), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "-2, 1", "2, NaN"})
    void lifeDataAreAboveZero(double shape, double scale) {
        assertThrows(IllegalArgumentException.class, () -> new Wear(shape, scale));
    }
}
