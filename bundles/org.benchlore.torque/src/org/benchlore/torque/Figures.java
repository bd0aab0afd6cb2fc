// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.math.BigDecimal;
import java.util.regex.Pattern;

import org.benchlore.measure.Quantity;
import org.benchlore.measure.Wording;

/** Plain numbers as people write them, within the range that makes sense, and as they are shown. No locale. */
public final class Figures {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{0,9}(?:[.,][0-9]{1,9})?");
    private static final int DIGITS = 3;

    private Figures() {
    }

    /**
     * Reads a number with decimal point or comma.
     *
     * @param what what it is, such as {@code friction}
     * @param text the text as entered
     * @param low the smallest that is accepted
     * @param high the largest that is accepted
     * @param example a good one
     * @throws IllegalArgumentException with one plain sentence if it is no number or outside the range
     */
    public static double read(String what, String text, double low, double high, String example) {
        var trimmed = text == null ? "" : text.strip();
        if (trimmed.isEmpty() || !NUMBER.matcher(trimmed).matches() || trimmed.equals("-")) {
            throw Wording.problem(trimmed, "is no number for the " + what, example);
        }
        return within(what, Double.parseDouble(trimmed.replace(',', '.')), low, high, example);
    }

    /**
     * Returns the value if it lies in the range.
     *
     * @throws IllegalArgumentException with one plain sentence if not, also for NaN
     */
    public static double within(String what, double value, double low, double high, String example) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("A " + what + " of " + plain(value) + " is outside " + plain(low) + " to "
                    + plain(high) + ": write for example " + example + ".");
        }
        return value;
    }

    /** Shows a figure with three digits, whole digits kept, decimal point: {@code 83.6}, {@code 1136}, {@code 0.163}. */
    public static String show(double value) {
        return Double.isFinite(value) ? Quantity.rounded(BigDecimal.valueOf(value), DIGITS).toPlainString()
                : String.valueOf(value);
    }

    /** Shows a share as whole percent: {@code 73 %}. */
    public static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** Shows a figure as it was given, without an exponent and without noughts at its end. */
    public static String plain(double value) {
        return Double.isFinite(value) ? Quantity.rounded(BigDecimal.valueOf(value), 12).toPlainString()
                : String.valueOf(value);
    }
}
