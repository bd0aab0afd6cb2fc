// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.words;

import java.util.ArrayList;
import java.util.List;

/**
 * The words of a text in the form in which they are compared: lower case, without the endings of plurals, of the past
 * and of -ing. What stands in braces is passed over: {@code {tool:jack}} is a link, no word.
 */
public final class Text {

    /** A text without words. */
    public static final Text NOTHING = new Text(List.of());
    /** Ends a sentence: no phrase goes across it. */
    static final String STOP = ".";

    private static final int SHORTEST = 3;
    private static final List<String> ENDINGS = List.of("ing", "ed", "e");

    private final List<String> words;
    /** Found when first asked for; found twice it is the same. */
    private List<Text> sentences;

    private Text(List<String> words) {
        this.words = words;
    }

    /** Reads a text; null counts as nothing. */
    public static Text of(String text) {
        if (text == null || text.isBlank()) {
            return NOTHING;
        }
        var found = new ArrayList<String>();
        var word = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            depth += character == '{' ? 1 : character == '}' ? -1 : 0;
            if (depth <= 0 && Character.isLetterOrDigit(character)) {
                word.append(Character.toLowerCase(character));
                continue;
            }
            end(word, found);
            if (character == ';' || character == '.' && isEnd(text, i)) {
                found.add(STOP);
            }
        }
        end(word, found);
        return new Text(found);
    }

    private static boolean isEnd(String text, int at) {
        return at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1));
    }

    private static void end(StringBuilder word, List<String> found) {
        if (word.length() > 0) {
            found.add(base(word.toString()));
            word.setLength(0);
        }
    }

    /** The base of a word: crude, but the same for phrases and texts. */
    static String base(String word) {
        var base = cut(word, "s");
        for (var ending : ENDINGS) {
            if (base.length() - ending.length() >= SHORTEST && base.endsWith(ending) && !base.endsWith("eed")) {
                base = cut(base, ending);
                break;
            }
        }
        int last = base.length() - 1;
        return last > SHORTEST && base.charAt(last) == base.charAt(last - 1) && base.charAt(last) != 's'
                ? base.substring(0, last) : base;
    }

    private static String cut(String word, String ending) {
        return word.endsWith(ending) && !word.endsWith("ss") && word.length() - ending.length() >= SHORTEST
                ? word.substring(0, word.length() - ending.length()) : word;
    }

    List<String> words() {
        return words;
    }

    /** Its sentences. */
    public List<Text> sentences() {
        if (sentences == null) {
            sentences = split();
        }
        return sentences;
    }

    private List<Text> split() {
        var found = new ArrayList<Text>();
        int start = 0;
        for (int i = 0; i <= words.size(); i++) {
            if (i == words.size() || words.get(i).equals(STOP)) {
                if (i > start) {
                    found.add(new Text(words.subList(start, i)));
                }
                start = i + 1;
            }
        }
        return found;
    }

    /** How many words it has. */
    public int length() {
        int stops = 0;
        for (var word : words) {
            stops += word.equals(STOP) ? 1 : 0;
        }
        return words.size() - stops;
    }
}
