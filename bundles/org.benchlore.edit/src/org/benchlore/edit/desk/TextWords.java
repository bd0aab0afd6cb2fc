// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The words of a text in a form that can be compared: lower case, without marks, without a plural s. */
final class TextWords {

    private static final Set<String> SMALL = Set.of("the", "and", "with", "for", "from", "when", "while", "after", "before",
            "off", "out", "not", "does", "was", "were", "are", "has", "had", "but", "than", "that", "this", "each", "every");
    private static final int SHORTEST = 3;

    private final List<String> words;

    TextWords(String text) {
        this.words = text == null ? List.of() : Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty()).map(TextWords::singular).toList();
    }

    private static String singular(String word) {
        return word.length() > SHORTEST && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1) : word;
    }

    List<String> all() {
        return words;
    }

    boolean isEmpty() {
        return words.isEmpty();
    }

    /** Where another text's words stand in this one, in a row; -1 if they do not. */
    int indexOf(TextWords phrase) {
        return phrase.isEmpty() ? -1 : Collections.indexOfSubList(words, phrase.words);
    }

    /** Words that say something: not the small ones of the language. */
    Set<String> telling() {
        return words.stream().filter(word -> word.length() >= SHORTEST && !SMALL.contains(word))
                .collect(Collectors.toUnmodifiableSet());
    }
}
