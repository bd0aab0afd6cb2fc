// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One entry of a word list: at least two different words or phrases of up to four words each. In a
 * {@link WordKind#SHORT} or {@link WordKind#SLIP} entry the last one is what the others stand for.
 *
 * @throws IllegalArgumentException if the words are too few, too long, empty, or one of them is there twice
 */
public record WordEntry(WordKind kind, List<String> words) {

    /** The longest phrase that can be found, in words. */
    static final int LONGEST = 4;

    public WordEntry {
        words = List.copyOf(words);
        var forms = words.stream().map(WordForm::of).toList();
        if (forms.size() < 2 || forms.stream().distinct().count() < forms.size()) {
            throw new IllegalArgumentException("An entry needs two or more different words: " + words);
        }
        if (forms.stream().anyMatch(form -> form.isEmpty() || form.wordCount() > LONGEST)) {
            throw new IllegalArgumentException("A phrase has one to " + LONGEST + " words: " + words);
        }
    }

    /** Returns the word that the others stand for: the last. */
    String target() {
        return words.get(words.size() - 1);
    }

    /** Returns all words but the last. */
    List<String> others() {
        return words.subList(0, words.size() - 1);
    }

    /**
     * Reads a line such as {@code short | hyd, hydr, hydraulic}.
     *
     * @throws IllegalArgumentException if the line is not of that form
     */
    static WordEntry parse(String line) {
        int bar = line.indexOf('|');
        if (bar < 0) {
            throw new IllegalArgumentException("Write 'kind | word, word' instead of: " + line);
        }
        var kind = WordKind.valueOf(line.substring(0, bar).strip().toUpperCase(Locale.ROOT));
        var words = Arrays.stream(line.substring(bar + 1).split(",", -1)).map(String::strip).toList();
        return new WordEntry(kind, words);
    }
}
