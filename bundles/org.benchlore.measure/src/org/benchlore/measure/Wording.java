// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

/** How messages quote what somebody entered: short, and without characters that would break a line. */
public final class Wording {
    private static final int LONGEST = 40;

    private Wording() {
    }

    /** What was entered, at most 40 characters of it and a mark where it goes on; empty for null. */
    public static String shorten(String text) {
        if (text == null) {
            return "";
        }
        var shown = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        return shown.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}\\p{Cs}]", " ").strip();
    }

    /**
     * A refusal in one sentence.
     *
     * @param text what was entered
     * @param what what is wrong with it, following its quotation
     * @param example a form that is accepted
     */
    public static IllegalArgumentException problem(String text, String what, String example) {
        return new IllegalArgumentException(
                "'" + shorten(text) + "' " + what + ": write for example " + example + ".");
    }
}
