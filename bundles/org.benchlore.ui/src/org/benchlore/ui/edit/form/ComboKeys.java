// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;

/**
 * Lets a drop-down be used from the keyboard without opening it, the same on every desktop: a letter goes to the next
 * word that begins with it, arrows to the word before or after.
 */
public final class ComboKeys {

    private ComboKeys() {
    }

    /**
     * Lets the keys work.
     *
     * @param combo a drop-down of words that cannot be typed into
     */
    public static void install(Combo combo) {
        combo.addListener(SWT.KeyDown, event -> pressed(combo, event));
    }

    private static void pressed(Combo combo, Event event) {
        int held = event.stateMask & SWT.MODIFIER_MASK;
        int next = held == SWT.NONE ? byArrow(combo, event.keyCode) : -1;
        if (next < 0 && (held == SWT.NONE || held == SWT.SHIFT)) {
            next = byLetter(combo, event.character);
        }
        if (next >= 0) {
            event.doit = false;
            choose(combo, next);
        }
    }

    /**
     * Chooses a word as if it had been done by hand.
     *
     * @param combo the drop-down
     * @param index its word, from 0; nothing happens beyond either end
     */
    public static void choose(Combo combo, int index) {
        if (index >= 0 && index < combo.getItemCount() && index != combo.getSelectionIndex()) {
            combo.select(index);
            combo.notifyListeners(SWT.Selection, new Event());
        }
    }

    private static int byArrow(Combo combo, int key) {
        int by = key == SWT.ARROW_DOWN ? 1 : key == SWT.ARROW_UP ? -1 : 0;
        return by == 0 ? -1 : Math.max(0, Math.min(combo.getItemCount() - 1, combo.getSelectionIndex() + by));
    }

    private static int byLetter(Combo combo, char letter) {
        if (!Character.isLetterOrDigit(letter)) {
            return -1;
        }
        int count = combo.getItemCount();
        for (int i = 1; i <= count; i++) {
            int at = (combo.getSelectionIndex() + i + count) % count;
            if (Character.toLowerCase(combo.getItem(at).charAt(0)) == Character.toLowerCase(letter)) {
                return at;
            }
        }
        return -1;
    }
}
