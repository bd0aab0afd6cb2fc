// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Optional;
import java.util.regex.Pattern;

import org.benchlore.model.FieldNote;
import org.benchlore.model.TopElement;

/** What an element is called in lists and headings. */
public final class ElementTitle {

    private static final String BROKEN_OFF = " …";
    private static final int LONGEST = 80;
    private static final int SHORTEST = 20;
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?](?= )");
    private static final Pattern CLAUSE_END = Pattern.compile("[,;:](?= )| [-–—] ");

    private ElementTitle() {
    }

    /**
     * Returns an element's title. A note written in a hurry has only a text: then its first line stands for one
     * or, where that is long, its first sentence, or as much of it as can be read at a glance, followed by an ellipsis.
     *
     * @param top an element
     * @return its title, its first line or sentence, or its id
     */
    public static String of(TopElement top) {
        if (top.getTitle() != null && !top.getTitle().isBlank()) {
            return top.getTitle();
        }
        return top instanceof FieldNote note && note.getText() != null && !note.getText().isBlank()
                ? firstWords(note.getText().strip()) : top.getId();
    }

    /**
     * Returns the words of a title as they stand in a note's text, if that is where they come from.
     *
     * @param title a title
     * @return the title without the ellipsis of one that was broken off
     */
    public static String written(String title) {
        return title.endsWith(BROKEN_OFF) ? title.substring(0, title.length() - BROKEN_OFF.length()) : title;
    }

    private static String firstWords(String text) {
        var line = text.lines().findFirst().orElse(text).strip();
        return line.length() <= LONGEST ? line : sentence(line).orElseGet(() -> clause(line) + BROKEN_OFF);
    }

    /** The first sentence that says enough, without its full stop. */
    private static Optional<String> sentence(String line) {
        var ends = SENTENCE_END.matcher(line);
        while (ends.find() && ends.start() <= LONGEST) {
            if (ends.start() >= SHORTEST) {
                return Optional.of(line.substring(0, line.charAt(ends.start()) == '.' ? ends.start() : ends.start() + 1));
            }
        }
        return Optional.empty();
    }

    /** What fits, broken off where a clause ends or, where none does, between two words. */
    private static String clause(String line) {
        var ends = CLAUSE_END.matcher(line);
        int end = 0;
        while (ends.find() && ends.start() <= LONGEST) {
            end = ends.start();
        }
        if (end >= LONGEST / 2) {
            return line.substring(0, end);
        }
        int blank = line.lastIndexOf(' ', LONGEST);
        return line.substring(0, blank < LONGEST / 2 ? LONGEST : blank);
    }
}
