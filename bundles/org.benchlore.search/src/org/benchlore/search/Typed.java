// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;

/**
 * What was typed, in words. Nothing typed is an operator: every character is part of a word or separates words, so
 * that nothing can be mistyped.
 *
 * @param text what was typed, cut off where it is very long
 * @param words its words
 */
record Typed(String text, List<Word> words) {

    private static final int MOST_CHARACTERS = 2_000;
    private static final int MOST_WORDS = 100;

    /**
     * A word.
     *
     * @param exact in lower case
     * @param stem reduced to its stem, empty for a little word
     * @param start where it begins in the text
     * @param end where it ends
     */
    record Word(String exact, String stem, int start, int end) {

        boolean isLittle() {
            return stem.isEmpty();
        }

        boolean hasDigit() {
            return exact.chars().anyMatch(Character::isDigit);
        }
    }

    static Typed of(Analyzer analyzer, String typed) {
        var text = typed.length() > MOST_CHARACTERS ? typed.substring(0, MOST_CHARACTERS) : typed;
        var words = new ArrayList<Word>();
        for (var exact : words(analyzer, Fields.WORDS, text)) {
            if (words.size() < MOST_WORDS && !exact.exact().isEmpty()) {
                var stem = words(analyzer, Fields.ALL, exact.exact());
                words.add(new Word(exact.exact(), stem.isEmpty() ? "" : stem.get(0).exact(), exact.start(), exact.end()));
            }
        }
        return new Typed(text, List.copyOf(words));
    }

    /** Returns the words of a text as they stand in a field of the index. */
    static List<Word> words(Analyzer analyzer, String field, String text) {
        var words = new ArrayList<Word>();
        try (var stream = analyzer.tokenStream(field, text)) {
            var term = stream.addAttribute(CharTermAttribute.class);
            var offset = stream.addAttribute(OffsetAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                words.add(new Word(term.toString(), "", offset.startOffset(), offset.endOffset()));
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("Reading from memory cannot fail", e);
        }
        return words;
    }

    /** Tells whether a word may go on, since nothing stands behind it. */
    boolean isUnfinished(Word word) {
        return word.end() == text.length();
    }

    /** Returns what was typed without blanks around it. */
    String stripped() {
        return text.strip();
    }
}
