// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

/**
 * How a part wears out, by Weibull life data: R(t) = exp(−(t / scale)^shape).
 *
 * @param shape shape, above 0; above 1 means that it wears
 * @param scale scale, above 0, in the unit in which ages are given
 */
public record Wear(double shape, double scale) {

    /**
     * Checks the data.
     *
     * @throws IllegalArgumentException if one of them is not above 0
     */
    public Wear {
        if (!(shape > 0) || !(scale > 0)) {
            throw new IllegalArgumentException("Life data must be above 0, not " + shape + " and " + scale);
        }
    }

    /**
     * Returns the chance that a new part reaches an age.
     *
     * @param age age, not negative
     * @return 0 to 1
     */
    public double reaches(double age) {
        return Math.exp(-Math.pow(age / scale, shape));
    }

    /**
     * Returns the chance that a part that is still good at one age fails before it is so much older:
     * 1 − exp((T / scale)^shape − ((T + t) / scale)^shape), published as the conditional Weibull.
     *
     * @param age how old it is
     * @param next how much longer it must hold
     * @return 0 to 1
     */
    public double failsWithin(double age, double next) {
        return -Math.expm1(Math.pow(age / scale, shape) - Math.pow((age + next) / scale, shape));
    }
}
