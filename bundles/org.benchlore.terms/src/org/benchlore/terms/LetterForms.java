// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Codes written with their letter: {@code P0841}, {@code P0841-64}, {@code P084164}, with a status byte behind. */
final class LetterForms {
    private static final String BYTE = "(?:0X|\\$)?(?<%s>[0-9A-F]{2})H?";
    private static final String WORD = "(?:FTB|FT|FAILURE TYPE|TYPE|SYMPTOM)";
    private static final Pattern FORM = Pattern.compile("(?<letter>[PCBU])[ .-]?(?<digits>[0-3][0-9A-F]{3})"
            + "(?:(?<gap>[ ./:_-]{0,3}|, ?|[ -]?[(\\[]|[ ,-]{0,2}" + WORD + "[ :=]{0,2})" + BYTE.formatted("type")
            + "(?<end>[)\\]]?)(?:(?:[ ./:_,-]{1,3}(?:STATUS[ :=]{0,2})?[\\[(]?|[\\[(])" + BYTE.formatted("status")
            + "[\\])]?)?)?");
    private static final Pattern START = Pattern.compile("([PCBU])[ .-]?([0-9OIL][0-9A-Z]*)(.*)");
    private static final Pattern TYPE_BEHIND = Pattern.compile("[ ./:_-]{0,3}[0-9A-FOIL]{2}");
    private static final Pattern SPACED = Pattern.compile("([PCBU])((?:[ .:/_-]{0,2}[0-9A-F]){4,6})");
    private static final Pattern STATUS = Pattern.compile("[ ,;:(\\[-]{1,3}STATUS[ :=]{0,2}" + BYTE.formatted("status")
            + "[)\\]]?");
    private static final Pattern LOOSE = Pattern.compile("[ ,]+|[ -]?[(\\[]");
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
            var rest = start.group(3);
            var behind = TYPE_BEHIND.matcher(rest).matches() ? repaired(rest) : rest;
            var form = FORM.matcher(start.group(1) + repaired(start.group(2)) + behind);
            if (form.matches()) {
                add(form, found, "Read with 0 for the letter O and 1 for I or L. ");
            }
        }
    }

    /** Digits with gaps between them, as {@code P 07 41 14}; raw bytes never fit, their first letter is a digit. */
    static void readSpaced(String text, Findings found) {
        var spaced = SPACED.matcher(text);
        if (spaced.matches()) {
            var form = FORM.matcher(spaced.group(1) + spaced.group(2).replaceAll("[^0-9A-F]", ""));
            if (form.matches()) {
                add(form, found, "Read without the gaps. ");
            }
        }
    }

    /** A good beginning with something else behind it, or a sentence on what is wrong. */
    static void readOdd(String text, Findings found) {
        var start = START.matcher(text);
        if (!start.matches() || !Hex.hasDigit(start.group(2))) {
            return;
        }
        var letter = start.group(1);
        boolean sound = beginsWell(letter, start.group(2));
        var digits = sound ? start.group(2) : repaired(start.group(2));
        // A repaired beginning with more digits behind it, 'POO741', would be guessing which digit is too many.
        if (sound || digits.length() == DIGITS && beginsWell(letter, digits)) {
            beginning(letter + digits.substring(0, DIGITS), digits.substring(DIGITS) + start.group(3), found);
        } else {
            found.problem(wrong(letter, digits));
        }
    }

    private static boolean beginsWell(String letter, String digits) {
        return digits.length() >= DIGITS && FORM.matcher(letter + digits.substring(0, DIGITS)).matches();
    }

    private static String repaired(String digits) {
        return digits.replace('O', '0').replace('I', '1').replace('L', '1');
    }

    private static void add(Matcher form, Findings found, String note) {
        var base = TwoByteCode.of(form.group("letter") + form.group("digits"));
        var type = form.group("type");
        if (type == null) {
            found.add(CodeScheme.J2012, base.text(), note + base.remark());
            return;
        }
        var code = new ThreeByteCode(base, Integer.parseInt(type, 16));
        var status = form.group("status");
        found.add(CodeScheme.ISO14229, code.text(), note + code.remark() + (status == null ? "" : words(status)));
        if (status == null && LOOSE.matcher(form.group("gap")).matches()) {
            found.add(CodeScheme.J2012, base.text(), note + "If '" + type
                    + "' is not the failure type but a count or a status. " + base.remark());
        }
    }

    private static void beginning(String code, String rest, Findings found) {
        var base = TwoByteCode.of(code);
        var status = STATUS.matcher(rest);
        if (status.matches()) {
            found.add(CodeScheme.J2012, base.text(), base.remark() + words(status.group("status")));
            return;
        }
        var sentence = "What follows, '" + rest.strip() + "', is not a failure type (two hex digits) and is left out.";
        found.add(CodeScheme.J2012, base.text(), sentence + " " + base.remark());
        found.problem(sentence);
    }

    private static String words(String status) {
        return " " + new StatusByte(Integer.parseInt(status, 16)).sentence();
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
