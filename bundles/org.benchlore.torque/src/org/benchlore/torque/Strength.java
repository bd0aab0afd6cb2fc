// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * Minimum strengths of a class at a size, MPa.
 *
 * @param proof proof stress; for stainless the yield stress, since its standard gives no proof stress
 * @param yield yield stress or 0.2 % proof stress
 * @param tensile tensile strength
 * @param remark what must be known beside the figures, empty if nothing
 */
public record Strength(double proof, double yield, double tensile, String remark) {

    public Strength {
        if (!(proof > 0 && yield >= proof && tensile >= yield)) {
            throw new IllegalArgumentException("Proof, yield and tensile strength must rise in this order, in MPa: "
                    + "write for example 830, 940, 1040.");
        }
    }

    /**
     * The strengths of a class for a thread.
     *
     * @throws IllegalArgumentException with one plain sentence if the standard has no such bolt
     */
    public static Strength of(PropertyClass propertyClass, BoltThread thread) {
        return new StrengthTable().strength(propertyClass, thread);
    }
}
