// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Gives each label of a form a letter by which Alt leads to its field, none of them twice. */
final class Mnemonics {

    /** Letters of the main menu. */
    private static final String MENU = "fevsh";

    private final Set<Character> used = new HashSet<>();

    Mnemonics() {
        MENU.chars().forEach(letter -> used.add((char) letter));
    }

    Mnemonics(Mnemonics above) {
        used.addAll(above.used);
    }

    String mark(String label) {
        var lower = label.toLowerCase(Locale.ROOT);
        for (int i = 0; i < label.length(); i++) {
            if (lower.charAt(i) >= 'a' && lower.charAt(i) <= 'z' && used.add(lower.charAt(i))) {
                return label.substring(0, i) + "&" + label.substring(i);
            }
        }
        return label;
    }
}
