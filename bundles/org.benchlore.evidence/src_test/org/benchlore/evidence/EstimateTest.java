// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimateTest {

    /** Against Apache Commons Statistics 1.1, an independent calculation of the quantile. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "0.14, 9.86", "1, 70", "3.25, 38.5", "12, 3", "200, 5000", "0.05, 9.95"})
    void sureAndBandAreThoseOfTheBetaDistribution(double failed, double sound) {
        var estimate = new Estimate(failed, sound);
        var other = BetaDistribution.of(failed, sound);
        for (double figure = 0.01; figure < 1; figure += 0.07) {
            assertEquals(other.survivalProbability(figure), estimate.sureAbove(figure), 1e-12);
        }
        for (double percent : new double[] {50, 80, 95}) {
            var band = estimate.band(percent);
            assertEquals(other.inverseCumulativeProbability((1 - percent / 100) / 2), band.low(), 1e-9);
            assertEquals(other.inverseSurvivalProbability((1 - percent / 100) / 2), band.high(), 1e-9);
        }
        assertEquals(other.getMean(), estimate.chance(), 1e-15);
    }

    /** I_x(2,3) = 6x² − 8x³ + 3x⁴, a textbook polynomial; at one half 0.6875. Computed. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.6875", "0.25, 0.26171875", "0.1, 0.0523"})
    void thePolynomialOfTwoAndThreeIsMet(double x, double below) {
        assertEquals(below, 1 - new Estimate(2, 3).sureAbove(x), 1e-12);
    }

    /** The rule of three: none in n gives an upper 95 % end of about 3/n. From memory; for a flat start, by formula. */
    @Test
    void noneOfAHundredIsUnderThreeInAHundred() {
        double high = new Estimate(1, 101).band(90).high();
        assertEquals(1 - Math.pow(0.05, 1 / 101.0), high, 1e-12);
        assertEquals(0.03, high, 0.001);
    }

    @Test
    void aFigureWorthTenJobsMovesWithTheJobs() {
        assertEquals(new Estimate(1.5, 8.5), Estimate.of(0.15, 10));
        assertEquals(new Estimate(3.5, 36.5), Estimate.of(0.15, 10).with(2, 30));
        assertEquals(0.0875, Estimate.of(0.15, 10).with(2, 30).chance(), 1e-15);
        assertEquals(new Estimate(0.5, 3.5), Estimate.unknown().with(0, 3));
    }

    @ParameterizedTest
    @CsvSource({"-0.5, 1", "0, 1", "1, 0", "2, 0"})
    void outsideOfZeroAndOneItIsSure(double figure, double sure) {
        assertEquals(sure, new Estimate(2, 3).sureAbove(figure));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.000000001", "1, 0.999999999"})
    void theEndsAreTakenAsNearlySo(double chance, double taken) {
        assertEquals(taken, Estimate.of(chance, 10).chance(), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "-1, 2", "2, -1", "NaN, 1", "1, NaN"})
    void weightsAreAboveZero(double failed, double sound) {
        assertThrows(IllegalArgumentException.class, () -> new Estimate(failed, sound));
    }
}
