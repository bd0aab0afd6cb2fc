// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The form in which words are compared: lower case, letters and digits only, one blank where anything else stood, so
 * that 'Teach-in' and 'teach in' are the same. An ending {@code 's} or {@code 'd} is dropped: 'assy's' is 'assy'.
 */
record WordForm(String spaced) {

    /** Shorter joined forms are too likely to be a word of their own: 'u/s' is not 'us'. */
    private static final int SHORTEST_JOINED = 4;
    private static final int SHORTEST_SINGULAR = 2;
    private static final int SHORTEST_VERB = 4;

    static WordForm of(String written) {
        return new WordForm(atoms(written.toLowerCase(Locale.ROOT)));
    }

    static WordForm of(List<WordForm> run) {
        return new WordForm(run.stream().map(WordForm::spaced).filter(form -> !form.isEmpty())
                .collect(Collectors.joining(" ")));
    }

    private static String atoms(String text) {
        var form = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int point = text.codePointAt(i);
            if (Character.isLetterOrDigit(point)) {
                form.append(gap && !form.isEmpty() ? " " : "").appendCodePoint(point);
                gap = false;
            } else if (isEndingAfter(text, i)) {
                i++;
                gap = true;
            } else {
                gap = true;
            }
        }
        return form.toString();
    }

    /** Whether an apostrophe stands here with nothing but an 's' or 'd' of its word behind it. */
    private static boolean isEndingAfter(String text, int i) {
        return i > 0 && (text.charAt(i) == '\'' || text.charAt(i) == '\u2019') && i + 1 < text.length()
                && (text.charAt(i + 1) == 's' || text.charAt(i + 1) == 'd')
                && (i + 2 == text.length() || !Character.isLetterOrDigit(text.codePointAt(i + 2)));
    }

    boolean isEmpty() {
        return spaced.isEmpty();
    }

    int wordCount() {
        return (int) spaced.chars().filter(c -> c == ' ').count() + 1;
    }

    boolean hasDigit() {
        return spaced.codePoints().anyMatch(Character::isDigit);
    }

    /** Returns the form without blanks. */
    String joined() {
        return spaced.replace(" ", "");
    }

    /** Whether this is also found with its blanks elsewhere: 'gearbox' by 'gear box', 'teach in' by 'teachin'. */
    boolean isFoundJoined() {
        return spaced.indexOf(' ') < 0 || joined().length() >= SHORTEST_JOINED;
    }

    /** Whether the last letter is that of an ending, so that it pays to look for bases. */
    boolean mayHaveBases() {
        return !isEmpty() && "sdg".indexOf(spaced.charAt(spaced.length() - 1)) >= 0;
    }

    /** Returns the forms of which this may be a plural, a past or an -ing form, likeliest first. */
    Stream<WordForm> bases() {
        var plurals = spaced.endsWith("ss") ? Stream.<String>empty() : cut("s", SHORTEST_SINGULAR, "");
        return Stream.of(plurals, cut("es", SHORTEST_SINGULAR, ""), cut("ies", SHORTEST_SINGULAR, "y"),
                cut("d", SHORTEST_VERB, ""), cut("ed", SHORTEST_VERB, ""), cut("ing", SHORTEST_VERB, ""),
                cut("ing", SHORTEST_VERB, "e")).flatMap(base -> base).map(WordForm::new);
    }

    /** Cuts an ending off if enough of the last word stays. */
    private Stream<String> cut(String ending, int shortest, String instead) {
        int stays = spaced.length() - ending.length();
        boolean enough = stays - (spaced.lastIndexOf(' ') + 1) >= shortest;
        return spaced.endsWith(ending) && enough ? Stream.of(spaced.substring(0, stays) + instead) : Stream.empty();
    }
}
