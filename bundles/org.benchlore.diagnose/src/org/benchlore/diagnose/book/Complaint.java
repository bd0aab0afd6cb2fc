// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.benchlore.terms.CodeReader;

/**
 * A complaint as it was typed, taken apart.
 *
 * @param words what was noticed; empty if nothing but codes was typed
 * @param codes the codes that stood among the words, as typed
 */
record Complaint(String words, List<String> codes) {

    private static final Pattern PIECE = Pattern.compile("(?i)(?:(?:with )?(?:the )?(?:(?:fault )?codes?|dtcs?)[ :#]+)?"
            + "(?<code>spn[ :]*[0-9]+(?:[ ,/:]*fmi[ :]*[0-9]+)?|[\\p{L}\\p{N}$][\\p{L}\\p{N}$/:.-]*[\\p{L}\\p{N}])");
    private static final Pattern DIGIT = Pattern.compile("\\p{Nd}");

    /**
     * Takes a text apart.
     *
     * @param text what was typed
     * @param isKnown whether a word is a code that the library knows for the machine
     * @return words and codes
     */
    static Complaint read(String text, Predicate<String> isKnown) {
        var codes = new ArrayList<String>();
        var words = PIECE.matcher(text).replaceAll(piece -> {
            var code = code(piece.group(), ((Matcher) piece).group("code"), isKnown);
            if (code.isEmpty()) {
                return Matcher.quoteReplacement(piece.group());
            }
            codes.add(code);
            return " ";
        });
        return new Complaint(tidy(words, codes), List.copyOf(codes));
    }

    private static String code(String piece, String word, Predicate<String> isKnown) {
        return DIGIT.matcher(word).find() && (isKnown.test(word) || !CodeReader.findIn(piece).isEmpty()) ? word : "";
    }

    /** Without codes a text stays as it was typed, but for a full stop. */
    private static String tidy(String words, List<String> codes) {
        return codes.isEmpty() ? words.strip().replaceAll("[ .,;:]+$", "") : words.replaceAll("\\s+([,;.])", "$1").replaceAll("\\s+", " ")
                .replaceAll("^[ ,;:.]+|[ ,;:]+$", "").replaceAll("(?i)(^| )(and|with|or)$", "");
    }
}
