// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.regex.Pattern;

/** J1939 codes written out: {@code SPN 520192 FMI 31}, {@code spn520192/31}, {@code 520192/31}. */
final class SpnForms {
    private static final String MARK = "[ :#=.-]{0,3}";
    private static final String NUMBER = "(0X[0-9A-F]{1,6}|[0-9]{1,9})";
    private static final Pattern FORWARD = Pattern.compile("SPN" + MARK + NUMBER
            + "(?:(?:[ ,;/:.-]{1,3}(?:FMI" + MARK + ")?|FMI" + MARK + ")" + NUMBER + ")?"
            + "(?:[ ,;/:-]{1,3}(?:OC|COUNT)" + MARK + "([0-9]{1,3}))?");
    private static final Pattern BACKWARD = Pattern.compile(
            "FMI" + MARK + NUMBER + "[ ,;/:.-]{0,3}SPN" + MARK + NUMBER);
    private static final Pattern BARE = Pattern.compile("([0-9]{1,6})[ ]?[ /.:,-][ ]?([0-9]{1,2})");

    private SpnForms() {
    }

    static boolean fits(String text) {
        return text.startsWith("SPN") || text.startsWith("FMI");
    }

    static void read(String text, Findings found) {
        var forward = FORWARD.matcher(text);
        var backward = BACKWARD.matcher(text);
        if (forward.matches()) {
            var count = forward.group(3) == null ? SpnFmi.COUNT_NOT_AVAILABLE : number(forward.group(3));
            add(number(forward.group(1)), forward.group(2) == null ? -1 : number(forward.group(2)), count, found);
        } else if (backward.matches()) {
            add(number(backward.group(2)), number(backward.group(1)), SpnFmi.COUNT_NOT_AVAILABLE, found);
        } else {
            found.problem("After SPN comes its number and after FMI its number, as in SPN 520192 FMI 31:"
                    + " look at the code again.");
        }
    }

    /** Two numbers without any word: possible only where the second can be an FMI. */
    static void readBare(String text, Findings found) {
        var bare = BARE.matcher(text);
        if (!bare.matches()) {
            return;
        }
        int spn = number(bare.group(1));
        int fmi = number(bare.group(2));
        if (spn <= SpnFmi.HIGHEST_SPN && fmi <= SpnFmi.HIGHEST_FMI) {
            var code = new SpnFmi(spn, fmi, SpnFmi.COUNT_NOT_AVAILABLE);
            found.add(CodeScheme.J1939, code.text(), "If these are SPN and FMI. " + code.remark());
        }
    }

    /** Whether the first number of a bare pair is too long or too uneven to be bytes, so that SPN/FMI comes first. */
    static boolean bareComesFirst(String text) {
        var bare = BARE.matcher(text);
        return bare.matches() && (bare.group(1).length() % 2 != 0 || bare.group(1).length() > 4);
    }

    private static void add(int spn, int fmi, int count, Findings found) {
        if (spn > SpnFmi.HIGHEST_SPN) {
            found.problem("An SPN goes from 0 to 524287, here it is " + spn + ": look at the code again.");
        } else if (fmi > SpnFmi.HIGHEST_FMI) {
            found.problem("An FMI goes from 0 to 31, here it is " + fmi + ": look at the code again.");
        } else if (fmi < 0) {
            found.add(CodeScheme.J1939, "SPN " + spn, "No FMI given: any failure of this parameter. "
                    + SpnFmi.definer(spn));
        } else {
            var code = new SpnFmi(spn, fmi, Math.min(count, SpnFmi.COUNT_NOT_AVAILABLE));
            found.add(CodeScheme.J1939, code.text(), code.remark());
        }
    }

    private static int number(String digits) {
        return digits.startsWith("0X") ? Integer.parseInt(digits.substring(2), 16) : Integer.parseInt(digits);
    }
}
