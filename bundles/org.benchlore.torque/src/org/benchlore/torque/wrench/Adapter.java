// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import org.benchlore.torque.Figures;

/**
 * An offset adapter on a torque wrench.
 *
 * @param length L, middle of the grip to the drive, mm, above 0
 * @param offset E, drive to the fastener, mm, 0 or more
 * @param angle θ between wrench and adapter, degrees: 0 in line, 90 square, 180 folded back
 */
public record Adapter(double length, double offset, double angle) {

    private static final double LONGEST = 5000;
    private static final double LONGEST_OFFSET = 2000;
    private static final double TURN_BACK = 180;
    /** Below this share of the wrench's length left over, the pull on the fastener hangs on too small a difference. */
    private static final double LEAST_LEFT = 0.5;

    public Adapter {
        checkLength(length);
        Figures.within("adapter length in mm", offset, 0, LONGEST_OFFSET, "50");
        Figures.within("adapter angle in degrees", angle, -TURN_BACK, TURN_BACK, "90");
        if (lever(length, offset, angle) < LEAST_LEFT * length) {
            throw new IllegalArgumentException("An adapter of " + Figures.plain(offset) + " mm folded back takes more than "
                    + "half of a length of " + Figures.plain(length) + " mm away: use it square to the wrench (90°) or a "
                    + "longer wrench.");
        }
    }

    private static void checkLength(double length) {
        Figures.within("wrench length in mm", length, 1, LONGEST, "400");
    }

    /**
     * Reads the three figures as entered, angle in degrees.
     *
     * @throws IllegalArgumentException with one plain sentence if one is no number or outside what can be
     */
    public static Adapter read(String length, String offset, String angle) {
        return new Adapter(readLength(length), readOffset(offset), readAngle(angle));
    }

    /** Reads L, mm. */
    public static double readLength(String text) {
        return Figures.read("wrench length in mm", text, 1, LONGEST, "400");
    }

    /** Reads E, mm. */
    public static double readOffset(String text) {
        return Figures.read("adapter length in mm", text, 0, LONGEST_OFFSET, "50");
    }

    /** Reads θ, degrees. */
    public static double readAngle(String text) {
        return Figures.read("adapter angle in degrees", text, -TURN_BACK, TURN_BACK, "90");
    }

    private static double lever(double length, double offset, double angle) {
        return length + offset * Math.cos(Math.toRadians(angle));
    }

    /**
     * Setting over torque on the fastener: L/(L + E·cos θ), for a pull square to the wrench at the middle of its grip
     * (the usual formula of wrench makers; worked examples beside its test). Exactly 1 at 90°.
     */
    public double factor() {
        return Math.abs(angle) == TURN_BACK / 2 ? 1 : length / lever(length, offset, angle);
    }
}
