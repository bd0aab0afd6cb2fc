// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * Which shares of the proof load are usual (common practice, no source): to a torque alone, half of proof to proof; a
 * snug torque before an angle, a twentieth to six tenths.
 */
enum Window {
    TORQUE(0.5, 1), SNUG(0.05, 0.6);

    private final double low;
    private final double high;

    Window(double low, double high) {
        this.low = low;
        this.high = high;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** The middle by ratio: what a torque is compared with when several readings fit. */
    double middle() {
        return Math.sqrt(low * high);
    }

    boolean holds(double share) {
        return share >= low && share <= high;
    }

    Place place(double share) {
        if (share > 1) {
            return Place.ABOVE_PROOF;
        }
        if (share > high) {
            return Place.HIGH_FOR_SNUG;
        }
        return share < low ? Place.BELOW : Place.USUAL;
    }
}
