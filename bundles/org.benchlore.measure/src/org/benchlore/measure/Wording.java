// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

/** How messages quote what somebody entered: short, and without characters that would break a line. */
final class Wording {
    private static final int LONGEST = 40;

    private Wording() {
    }

    static String shorten(String text) {
        if (text == null) {
            return "";
        }
        var shown = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        return shown.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}\\p{Cs}]", " ").strip();
    }

    static IllegalArgumentException problem(String text, String what, String example) {
        return new IllegalArgumentException(
                "'" + shorten(text) + "' " + what + ": write for example " + example + ".");
    }
}
