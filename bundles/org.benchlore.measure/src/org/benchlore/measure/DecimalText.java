// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it, at the start of a text: decimal point, decimal comma where it cannot be a thousands
 * comma, groups of three parted by a narrow or non-breaking space. {@code end} is where the number stops. No exponent.
 */
record DecimalText(BigDecimal value, int end) {
    static final int LONGEST_TEXT = 64;
    private static final int WHOLE_DIGITS = 15;
    private static final int DECIMALS = 20;
    private static final Pattern NUMBER = Pattern.compile("([+\\-−–]?)[ \u00A0]?((?:[0-9]|[.,](?=[0-9])"
            + "|[\u00A0\u2009\u202F](?=[0-9]{3}(?![0-9])))+)");
    private static final Pattern COMMA_GROUPS = Pattern.compile(
            "[0-9]{1,3}(,[0-9]{3})+\\.[0-9]+|[0-9]{1,3}(,[0-9]{3}){2,}");
    private static final Pattern POINT_GROUPS = Pattern.compile(
            "[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+|[0-9]{1,3}(\\.[0-9]{3}){2,}");
    private static final Pattern UNCLEAR_COMMA = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern PLAIN = Pattern.compile("[0-9]*([.,][0-9]+)?");

    /** Trims, and refuses what no value can be: nothing, far too long, line breaks and other control characters. */
    static String clean(String text, String example) {
        var trimmed = text == null ? "" : trim(text);
        if (trimmed.isEmpty()) {
            throw new IllegalArgumentException("Nothing is written here: write for example " + example + ".");
        }
        if (trimmed.length() > LONGEST_TEXT) {
            throw Wording.problem(trimmed, "is too long for a value", example);
        }
        if (trimmed.chars().anyMatch(c -> Character.isISOControl(c) || Character.isSurrogate((char) c))) {
            throw Wording.problem(trimmed, "holds a line break or another character that cannot be shown", example);
        }
        return trimmed;
    }

    /**
     * Reads the number a cleaned text starts with.
     *
     * @throws IllegalArgumentException with one plain sentence if there is none or it can be read in two ways
     */
    static DecimalText read(String text, String example) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.lookingAt()) {
            throw Wording.problem(text, "does not start with a number", example);
        }
        var digits = matcher.group(2).replaceAll("[\u00A0\u2009\u202F]", "");
        var value = value(text, digits, example);
        var sign = matcher.group(1);
        return new DecimalText(sign.isEmpty() || sign.equals("+") ? value : value.negate(), matcher.end());
    }

    private static BigDecimal value(String text, String digits, String example) {
        if (UNCLEAR_COMMA.matcher(digits).matches()) {
            throw new IllegalArgumentException("'" + Wording.shorten(text) + "' can be read in two ways: write "
                    + digits.replace(',', '.') + " for a fraction or " + digits.replace(",", "") + " for thousands.");
        }
        var plain = ungrouped(digits);
        if (!PLAIN.matcher(plain).matches()) {
            throw Wording.problem(text, "is not one number", example);
        }
        var value = new BigDecimal(plain.replace(',', '.'));
        if (value.precision() - value.scale() > WHOLE_DIGITS || value.scale() > DECIMALS) {
            throw Wording.problem(text, "has more digits than a workshop value can have", example);
        }
        return value;
    }

    private static String ungrouped(String digits) {
        if (COMMA_GROUPS.matcher(digits).matches()) {
            return digits.replace(",", "");
        }
        return POINT_GROUPS.matcher(digits).matches() ? digits.replace(".", "").replace(',', '.') : digits;
    }

    private static String trim(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isBlank(text.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF';
    }
}
