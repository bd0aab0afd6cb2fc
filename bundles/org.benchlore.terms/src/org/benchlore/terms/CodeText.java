// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Brings an entered text into upper-case ASCII as far as it goes: look-alike letters, dashes, spaces, lead words. */
final class CodeText {
    static final int LONGEST = 64;
    private static final String LOOKS_LIKE = "АВСЕНОРТХΑΒΕΗΙΟΡΤΧ−\u00AD„‚";
    private static final String MEANT = "ABCEHOPTXABEHIOPTX--\"'";
    private static final String OPENING = "([{<\"'";
    private static final String CLOSING = ")]}>\"'";
    private static final String TRAILING = " .,;:!?*/-。";
    private static final String LEADING = "#*•";
    private static final int FULL_WIDTH = 0xFEE0;
    private static final Pattern LEAD = Pattern.compile("^(?:(?:(?:FAULT|ERROR|TROUBLE) )?(?:CODE|DTC)S?|FAULT|ERROR)"
            + "[ :#=.-]{1,3}(?=.*[0-9]|[A-F]{4,8}$)");
    private static final Pattern GROUPED = Pattern.compile(
            "(SPN" + SpnForms.MARK + "[0-9]{1,3})[ .,]([0-9]{3})(?=[ ,;/:.-]{0,3}FMI)");

    private CodeText() {
    }

    /** Letters, digits and dashes that only look like ASCII are made ASCII, invisible signs go; case stays. */
    static String ascii(String text) {
        var plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 128) {
                plain.append(c);
            } else if (Character.getType(c) != Character.FORMAT || LOOKS_LIKE.indexOf(c) >= 0) {
                plain.append(ascii(c));
            }
        }
        return plain.toString();
    }

    private static char ascii(char c) {
        int index = LOOKS_LIKE.indexOf(c);
        if (index >= 0) {
            return MEANT.charAt(index);
        }
        if (c > FULL_WIDTH + ' ' && c < FULL_WIDTH + 127) {
            return (char) (c - FULL_WIDTH);
        }
        return switch (Character.getType(c)) {
            case Character.DECIMAL_DIGIT_NUMBER -> (char) ('0' + Character.digit(c, 10));
            case Character.DASH_PUNCTUATION -> '-';
            case Character.INITIAL_QUOTE_PUNCTUATION, Character.FINAL_QUOTE_PUNCTUATION -> '"';
            case Character.SPACE_SEPARATOR, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
            default -> c;
        };
    }

    static String normal(String entered) {
        var upper = Normalizer.normalize(entered, Normalizer.Form.NFKC).toUpperCase(Locale.ROOT);
        var spaced = ascii(upper).replaceAll("\\s+", " ").strip();
        return unwrapped(LEAD.matcher(unwrapped(spaced)).replaceFirst(""));
    }

    /** Closes the gap after the thousands of an SPN, '520.192', where FMI behind it shows what the numbers are. */
    static String joined(String upper) {
        return GROUPED.matcher(upper).replaceAll("$1$2");
    }

    private static String unwrapped(String text) {
        int from = 0;
        int to = text.length();
        while (to > from && TRAILING.indexOf(text.charAt(to - 1)) >= 0) {
            to--;
        }
        while (from < to && LEADING.indexOf(text.charAt(from)) >= 0) {
            from++;
        }
        var inside = text.substring(from, to).strip();
        boolean wrapped = inside.length() > 2 && OPENING.indexOf(inside.charAt(0)) >= 0
                && CLOSING.indexOf(inside.charAt(inside.length() - 1)) >= 0;
        return wrapped ? unwrapped(inside.substring(1, inside.length() - 1).strip()) : inside;
    }
}
