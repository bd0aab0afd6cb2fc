// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import org.apache.commons.numbers.gamma.RegularizedBeta;

/**
 * What is believed of a chance: a beta distribution. A figure worth N jobs and K of M jobs counted since give
 * failed = N × figure + K, sound = N × (1 − figure) + M − K (conjugate prior, textbook rule).
 *
 * @param failed weight of the jobs that failed, more than 0
 * @param sound weight of the jobs that held, more than 0
 */
public record Estimate(double failed, double sound) {

    private static final int HALVINGS = 60;
    private static final double LEAST = 1e-9;

    /**
     * Checks the weights.
     *
     * @throws IllegalArgumentException if one of them is not above 0
     */
    public Estimate {
        if (!(failed > 0) || !(sound > 0)) {
            throw new IllegalArgumentException("An estimate needs weights above 0, not " + failed + " and " + sound);
        }
    }

    /**
     * Starts from a figure.
     *
     * @param chance the figure, 0 to 1; the ends are taken as nearly so
     * @param worth how many jobs it is worth, above 0
     * @return the estimate before any job is counted
     */
    public static Estimate of(double chance, double worth) {
        double inside = Math.min(1 - LEAST, Math.max(LEAST, chance));
        return new Estimate(worth * inside, worth * (1 - inside));
    }

    /**
     * Starts from nothing: half a job each way, so that the first jobs soon outweigh it (Jeffreys' rule).
     *
     * @return the estimate before any job is counted
     */
    public static Estimate unknown() {
        return new Estimate(0.5, 0.5);
    }

    /**
     * Takes in counted jobs.
     *
     * @param ofFailed weight of those that failed
     * @param of weight of all, not less
     * @return the estimate with them
     */
    public Estimate with(double ofFailed, double of) {
        return new Estimate(failed + ofFailed, sound + of - ofFailed);
    }

    /**
     * Returns the best single figure.
     *
     * @return the mean, between 0 and 1
     */
    public double chance() {
        return failed / (failed + sound);
    }

    /**
     * Returns how sure it is that the chance is above a figure.
     *
     * @param figure any number
     * @return 0 to 1
     */
    public double sureAbove(double figure) {
        if (figure <= 0) {
            return 1;
        }
        return figure >= 1 ? 0 : RegularizedBeta.complement(figure, failed, sound);
    }

    /**
     * Returns the band in which the chance lies.
     *
     * @param percent how sure, 0 to 100
     * @return its lower and its upper end, with the same left out on either side
     */
    public Band band(double percent) {
        double outside = (1 - percent / 100) / 2;
        return new Band(below(outside), below(1 - outside));
    }

    /** Returns the figure below which the chance lies with this sureness; 60 halvings leave less than 1e-18. */
    private double below(double sureness) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (1 - sureAbove(middle) < sureness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * A band of chances.
     *
     * @param low its lower end
     * @param high its upper end
     */
    public record Band(double low, double high) {
    }
}
