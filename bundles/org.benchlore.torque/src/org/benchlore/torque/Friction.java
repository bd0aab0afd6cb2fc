// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/**
 * Coefficients of friction, without unit, each 0.04 to 0.5 (VDI 2230 friction classes A to E begin at 0.04).
 *
 * @param thread in the thread, μG
 * @param head under head or nut, whichever is turned, μK
 */
public record Friction(double thread, double head) {

    private static final double LEAST = 0.04;
    private static final double MOST = 0.5;
    private static final String EXAMPLE = "0.12";

    public Friction {
        Figures.within("thread friction", thread, LEAST, MOST, EXAMPLE);
        Figures.within("head friction", head, LEAST, MOST, EXAMPLE);
    }

    /** The same friction in the thread and under the head. */
    public static Friction both(double friction) {
        Figures.within("friction", friction, LEAST, MOST, EXAMPLE);
        return new Friction(friction, friction);
    }

    /**
     * Reads one coefficient.
     *
     * @param what what it is, such as {@code friction}
     * @throws IllegalArgumentException with one plain sentence if it is no number from 0.04 to 0.5
     */
    public static double read(String what, String text) {
        return Figures.read(what, text, LEAST, MOST, EXAMPLE);
    }

    /** In words: {@code friction 0.12} or {@code friction 0.12 in the thread and 0.1 under the head}. */
    @Override
    public String toString() {
        return thread == head ? "friction " + Figures.plain(thread)
                : "friction " + Figures.plain(thread) + " in the thread and " + Figures.plain(head) + " under the head";
    }
}
