// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * How far preloads lie apart from bolt to bolt, by method, as the factor αA = most over least, and so ± (αA−1)/(αA+1)
 * about the mean. Torque wrench with friction estimated: bossard.com (VDI 2230:2015); the others from ± bands after
 * VDI 2230:1986 (trfastenings).
 */
public enum TighteningMethod {
    /** To yield, or by angle. */
    YIELD_OR_ANGLE("to yield or by angle", factor(0.05), factor(0.12)),
    /** Torque wrench, friction measured on the same parts. */
    WRENCH_FRICTION_MEASURED("torque wrench, friction measured", factor(0.17), factor(0.23)),
    /** Torque wrench, friction estimated. */
    WRENCH_FRICTION_ESTIMATED("torque wrench, friction estimated", 1.6, 2.0),
    /** Power driver of the precise kind. */
    POWER_DRIVER("power driver of the precise kind", factor(0.26), factor(0.43)),
    /** By feel: the far end of what is published for any method (mastik.pt, p. 682). */
    BY_FEEL("by feel", 4, 4);

    private final String words;
    private final double least;
    private final double most;

    TighteningMethod(String words, double least, double most) {
        this.words = words;
        this.least = least;
        this.most = most;
    }

    private static double factor(double half) {
        return (1 + half) / (1 - half);
    }

    /** The method in words. */
    public String words() {
        return words;
    }

    /** αA at its best. */
    public double leastFactor() {
        return least;
    }

    /** αA at its worst. */
    public double mostFactor() {
        return most;
    }

    /** Half the band about the mean as a share: (αA−1)/(αA+1). */
    public static double half(double factor) {
        return (factor - 1) / (factor + 1);
    }

    /** The least preload to be expected where {@code most} is the highest, N: most ÷ αA at its worst. */
    public double leastPreload(double most) {
        return most / this.most;
    }
}
