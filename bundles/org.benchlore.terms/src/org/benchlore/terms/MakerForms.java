// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Locale;
import java.util.regex.Pattern;

/** The makers' own numbers: hex, decimal, or letters and digits such as {@code E-47}. */
final class MakerForms {
    private static final Pattern FORM = Pattern.compile(
            "(?=[^0-9]{0,5}[0-9])[A-Z]{0,4} ?[0-9A-Z]+(?:[./-][0-9A-Z]+){0,3}");
    private static final Pattern HEX_MARK = Pattern.compile("^(?:0X|\\$)(?=[0-9A-F]+$)|(?<=^[0-9A-F]{2,8})H$");
    private static final Pattern PAIRS = Pattern.compile("(?:0X)?[0-9A-F]{2}(?: (?:0X)?[0-9A-F]{2}){1,3}");
    private static final int LONGEST = 16;
    private static final int HEX_DIGITS = 8;

    private MakerForms() {
    }

    /** Digits that may be hex; {@code decimal} says that they may be decimal as well. */
    static void hex(String digits, boolean decimal, Findings found) {
        var odd = digits.length() % 2 != 0 && !decimal && digits.length() > 2
                ? " It has an odd number of hex digits; standard codes have four or six." : "";
        var value = decimal ? "" : " In decimal it is " + Long.parseLong(digits, 16) + ".";
        found.add(CodeScheme.MAKER, digits, "If it is the maker's own number." + value + odd);
    }

    static void decimal(int value, Findings found) {
        found.add(CodeScheme.MAKER, evenHex(value),
                "If " + value + " is a decimal number of the maker's that is kept in hex.");
    }

    /** Without the signs that only say 'this is hex'. */
    static String unmarked(String text) {
        return text.length() > LONGEST ? text : HEX_MARK.matcher(text).replaceFirst("");
    }

    static String evenHex(int value) {
        var hex = Integer.toHexString(value).toUpperCase(Locale.ROOT);
        return hex.length() % 2 == 0 ? hex : "0" + hex;
    }

    /** A code that is known to be the maker's: hex letters alone are one as well. */
    static void readKnown(String text, Findings found) {
        read(text, found);
        var plain = unmarked(text);
        if (found.isEmpty() && Hex.isHex(plain) && plain.length() <= HEX_DIGITS) {
            hex(plain, false, found);
        }
    }

    /** Anything short with a digit in it, as a last resort or because the scheme is known to be the maker's. */
    static void read(String text, Findings found) {
        if (text.length() > LONGEST) {
            return;
        }
        if (PAIRS.matcher(text).matches()) {
            hex(text.replace("0X", "").replace(" ", ""), false, found);
            return;
        }
        var plain = unmarked(text);
        if (FORM.matcher(plain).matches()) {
            var sentence = found.problem().map(problem -> " It is no standard code. " + problem).orElse("");
            found.add(CodeScheme.MAKER, plain.replace(" ", ""), "Kept as the maker's own code." + sentence);
        }
    }
}
