// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import org.benchlore.model.FieldNote;
import org.benchlore.model.TopElement;

/** What an element is called in lists and headings. */
public final class ElementTitle {

    private static final int LONGEST = 80;

    private ElementTitle() {
    }

    /**
     * Returns an element's title. A note written in a hurry has only a text: then its first words stand for one.
     *
     * @param top an element
     * @return its title, its first words, or its id
     */
    public static String of(TopElement top) {
        if (top.getTitle() != null && !top.getTitle().isBlank()) {
            return top.getTitle();
        }
        return top instanceof FieldNote note && note.getText() != null && !note.getText().isBlank()
                ? firstWords(note.getText().strip()) : top.getId();
    }

    private static String firstWords(String text) {
        var line = text.lines().findFirst().orElse(text).strip();
        if (line.length() <= LONGEST) {
            return line;
        }
        int end = line.lastIndexOf(' ', LONGEST);
        return line.substring(0, end < LONGEST / 2 ? LONGEST : end);
    }
}
