// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Locale;

import org.benchlore.terms.CodeReader;

/**
 * A part number or code as somebody types it: separators and the case of letters do not matter, a piece of a number of
 * three characters or more is enough, and a fault code may stand in any of its written forms.
 *
 * @param typed as typed
 * @param letters its letters and digits alone
 */
record NumberSpelling(String typed, String letters) {

    private static final int SHORTEST_PIECE = 3;

    static NumberSpelling of(String typed) {
        return new NumberSpelling(typed.strip(), letters(typed));
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Whether one of the numbers is meant and no other. */
    boolean isOneOf(List<String> numbers) {
        return !letters.isEmpty() && numbers.stream().anyMatch(number -> letters(number).equals(letters)
                || CodeReader.indexForm(number).equals(CodeReader.indexForm(typed)));
    }

    /** Whether it is a piece of one of the numbers. */
    boolean isWithin(List<String> numbers) {
        return letters.length() >= SHORTEST_PIECE
                && numbers.stream().anyMatch(number -> letters(number).contains(letters));
    }
}
