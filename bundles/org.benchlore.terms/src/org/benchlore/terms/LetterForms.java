// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Codes written with their letter: {@code P0841}, {@code P0841-64}, {@code P084164}, with a status byte behind. */
final class LetterForms {
    private static final Pattern FORM = Pattern.compile("([PCBU])[ .-]?([0-3][0-9A-F]{3})"
            + "(?:(?:[ ./:_-]{0,3}|[ ,-]{0,2}(?:FTB|FAILURE TYPE)[ :]{0,2})(?:0X|\\$)?([0-9A-F]{2})H?"
            + "(?:(?:[ ./:_,-]{1,2}(?:STATUS[ :]{0,2})?[\\[(]?|[\\[(])(?:0X)?([0-9A-F]{2})H?[\\])]?)?)?");
    private static final Pattern START = Pattern.compile("([PCBU])[ .-]?([0-9OIL][0-9A-Z]*)(.*)");
    private static final int DIGITS = 4;

    private LetterForms() {
    }

    /** The forms that leave no doubt. */
    static void readExact(String text, Findings found) {
        var exact = FORM.matcher(text);
        if (exact.matches()) {
            add(exact, found, "");
        }
    }

    /** The same with the letter O for a zero, and I or L for a one. */
    static void readRepaired(String text, Findings found) {
        var start = START.matcher(text);
        if (start.matches() && start.group(2).chars().anyMatch(c -> c >= '1' && c <= '9')) {
            var form = FORM.matcher(start.group(1) + repaired(start.group(2)) + start.group(3));
            if (form.matches()) {
                add(form, found, "Read with 0 for the letter O and 1 for I or L. ");
            }
        }
    }

    /** A good beginning with something else behind it, or a sentence on what is wrong. */
    static void readOdd(String text, Findings found) {
        var start = START.matcher(text);
        if (!start.matches() || !Hex.hasDigit(text)) {
            return;
        }
        var letter = start.group(1);
        var digits = start.group(2);
        if (digits.length() >= DIGITS && FORM.matcher(letter + digits.substring(0, DIGITS)).matches()) {
            beginning(letter + digits.substring(0, DIGITS), digits.substring(DIGITS) + start.group(3), found);
        } else {
            found.problem(wrong(letter, repaired(digits)));
        }
    }

    private static String repaired(String digits) {
        return digits.replace('O', '0').replace('I', '1').replace('L', '1');
    }

    private static void add(Matcher form, Findings found, String note) {
        var base = TwoByteCode.of(form.group(1) + form.group(2));
        if (form.group(3) == null) {
            found.add(CodeScheme.J2012, base.text(), note + base.remark());
            return;
        }
        var code = new ThreeByteCode(base, Integer.parseInt(form.group(3), 16));
        var status = form.group(4) == null ? ""
                : " " + new StatusByte(Integer.parseInt(form.group(4), 16)).sentence();
        found.add(CodeScheme.ISO14229, code.text(), note + code.remark() + status);
    }

    private static void beginning(String code, String rest, Findings found) {
        var base = TwoByteCode.of(code);
        found.add(CodeScheme.J2012, base.text(), "What follows, '" + rest.strip()
                + "', is not a failure type (two hex digits) and is left out. " + base.remark());
    }

    private static String wrong(String letter, String digits) {
        if (digits.charAt(0) > '3') {
            return "The first digit after " + letter + " goes from 0 to 3, here it is " + digits.charAt(0)
                    + ": look at the code again.";
        }
        int hex = (int) digits.chars().takeWhile(Hex::isHexDigit).count();
        if (hex < Math.min(DIGITS, digits.length())) {
            return "'" + digits.charAt(hex) + "' is not a hex digit (0 to 9, A to F): look at the code again.";
        }
        return letter + " is followed by four digits, here by " + digits.length() + ": look at the code again.";
    }
}
