// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import org.benchlore.measure.MeasureUnits;

/**
 * Factors K of the short form T = K·F·d (Shigley, 9th ed., Table 8-15, after Bowman, Fastener Facts, 1985). The range
 * is what sellers of fasteners give where they differ (zipfastener.com), else the factor itself.
 */
public enum NutFactor {
    /** As it comes black, without plating. */
    BLACK("without plating, black", 0.30, 0.18, 0.30),
    /** Zinc-plated. */
    ZINC("zinc-plated", 0.20, 0.17, 0.35),
    /** Lubricated with oil. */
    LUBRICATED("lubricated", 0.18, 0.10, 0.26),
    /** Cadmium-plated. */
    CADMIUM("cadmium-plated", 0.16, 0.15, 0.19),
    /** Anti-seize paste. */
    PASTE("anti-seize paste", 0.12, 0.12, 0.12),
    /** A lubricated nut of the special kind. */
    SPECIAL_NUT("special lubricated nut", 0.09, 0.09, 0.09),
    /** Nothing is known. */
    UNKNOWN("state not known", 0.20, 0.20, 0.20);

    private static final double MILLIMETRES = 1000;
    private static final double LEAST = 0.05;
    private static final double MOST = 0.6;

    private final String words;
    private final double value;
    private final double least;
    private final double most;

    NutFactor(String words, double value, double least, double most) {
        this.words = words;
        this.value = value;
        this.least = least;
        this.most = most;
    }

    /** The state in words. */
    public String words() {
        return words;
    }

    /** K. */
    public double value() {
        return value;
    }

    /** The least that is given for this state. */
    public double least() {
        return least;
    }

    /** The most that is given for this state. */
    public double most() {
        return most;
    }

    /**
     * Torque by the short form.
     *
     * @param factor K, 0.05 to 0.6
     * @param preload N
     * @param diameter nominal diameter, mm
     * @throws IllegalArgumentException with one plain sentence if the factor is outside or a figure is not above zero
     */
    public static Calculated torque(double factor, double preload, double diameter) {
        Figures.within("nut factor", factor, LEAST, MOST, "0.2");
        return Calculated.of(factor * preload * diameter / MILLIMETRES, MeasureUnits.NEWTON_METRE);
    }

    /**
     * Preload by the short form.
     *
     * @param factor K, 0.05 to 0.6
     * @param torque N·m
     * @param diameter nominal diameter, mm
     * @throws IllegalArgumentException as {@link #torque}
     */
    public static Calculated preload(double factor, double torque, double diameter) {
        Figures.within("nut factor", factor, LEAST, MOST, "0.2");
        return Calculated.of(torque * MILLIMETRES / (factor * diameter), MeasureUnits.NEWTON);
    }

    /**
     * K of a thread by the textbook's exact screw formula, head rubbing at 1.25 d:
     * K = (dm/2d)·(tan λ + f sec α)/(1 − f tan λ sec α) + 0.625 fc, α = 30° (Shigley, 8-26 and 8-27).
     */
    public static double ofScrew(BoltThread thread, Friction friction) {
        double mean = (thread.diameter() + thread.minorDiameter()) / 2;
        double lead = thread.pitch() / (Math.PI * mean);
        double rub = friction.thread() / Math.cos(Math.PI / 6);
        return mean / (2 * thread.diameter()) * (lead + rub) / (1 - rub * lead) + 0.625 * friction.head();
    }
}
