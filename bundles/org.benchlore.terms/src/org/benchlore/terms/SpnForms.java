// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Optional;
import java.util.regex.Pattern;

/** J1939 codes written out: {@code SPN 520192 FMI 31}, {@code spn520192/31}, {@code 520192/31}. */
final class SpnForms {
    static final String MARK = "[ :#=.-]{0,3}(?:(?:NO|NR|NUMBER)[ :#=.-]{1,3})?";
    private static final String NUMBER = "(0X[0-9A-F]{1,8}|[0-9A-F]{1,8}H|[0-9]{1,18})";
    private static final String COUNT = "(?:[ ,;/:-]{1,3}CM" + MARK + "[01])?"
            + "(?:[ ,;/:-]{0,3}(?:OC|COUNT|X|\\(|\\[)" + MARK + "([0-9]{1,3})[)\\]]?)?";
    private static final Pattern FORWARD = Pattern.compile("SPN" + MARK + NUMBER
            + "(?:(?:[ ,;/:.-]{1,3}(?:FMI" + MARK + ")?|FMI" + MARK + ")" + NUMBER + ")?" + COUNT);
    private static final Pattern BACKWARD = Pattern.compile(
            "FMI" + MARK + NUMBER + "[ ,;/:.-]{0,3}SPN" + MARK + NUMBER + COUNT);
    private static final Pattern FMI_ALONE = Pattern.compile("FMI" + MARK + NUMBER);
    private static final String GAP = " ?[ /.:,-] ?";
    private static final Pattern BARE = Pattern.compile("([0-9]{1,6})" + GAP + "([0-9]{1,2})");
    private static final Pattern BARE_COUNTED = Pattern.compile(
            "([0-9]{5,6})" + GAP + "([0-9]{1,2})" + GAP + "([0-9]{1,3})");
    private static final Pattern BARE_BEYOND = Pattern.compile("([0-9]{5,9})" + GAP + "([0-9]{1,3})");
    private static final String EXAMPLE = ", as in SPN 520192 FMI 31";

    private SpnForms() {
    }

    static boolean fits(String text) {
        return text.startsWith("SPN") || text.startsWith("FMI");
    }

    static void read(String text, Findings found) {
        var joined = CodeText.joined(text);
        var forward = FORWARD.matcher(joined);
        var backward = BACKWARD.matcher(joined);
        var alone = FMI_ALONE.matcher(joined);
        if (forward.matches()) {
            add(number(forward.group(1)), forward.group(2) == null ? -1 : number(forward.group(2)),
                    forward.group(3), found);
        } else if (backward.matches()) {
            add(number(backward.group(2)), number(backward.group(1)), backward.group(3), found);
        } else if (alone.matches()) {
            fmiAlone(number(alone.group(1)), found);
        }
    }

    static void cannotBeRead(Findings found) {
        found.problem("After SPN comes its number and after FMI its number" + EXAMPLE + ": look at the code again.");
    }

    /** Two numbers without any word: possible only where the second can be an FMI; a third one is the count. */
    static void readBare(String text, Findings found) {
        var bare = BARE.matcher(text);
        var counted = BARE_COUNTED.matcher(text);
        if (bare.matches()) {
            addBare(number(bare.group(1)), number(bare.group(2)), SpnFmi.COUNT_NOT_AVAILABLE, found);
        } else if (counted.matches()) {
            addBare(number(counted.group(1)), number(counted.group(2)), number(counted.group(3)), found);
        }
    }

    /** Whether the first number of a bare pair is too long or too uneven to be bytes, so that SPN/FMI comes first. */
    static boolean bareComesFirst(String text) {
        var bare = BARE.matcher(text);
        return bare.matches() && (bare.group(1).length() % 2 != 0 || bare.group(1).length() > 4)
                || BARE_COUNTED.matcher(text).matches();
    }

    /** Says why a pair that looks like SPN and FMI cannot be one. */
    static void explainBare(String text, Findings found) {
        var beyond = BARE_BEYOND.matcher(text);
        if (beyond.matches()) {
            outOfRange(number(beyond.group(1)), number(beyond.group(2)))
                    .ifPresent(sentence -> found.problem("If these are SPN and FMI: "
                            + Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1)));
        }
    }

    private static void addBare(long spn, long fmi, long count, Findings found) {
        if (outOfRange(spn, fmi).isEmpty() && count <= SpnFmi.COUNT_NOT_AVAILABLE) {
            var code = new SpnFmi((int) spn, (int) fmi, (int) count);
            found.add(CodeScheme.J1939, code.text(), "If these are SPN and FMI. " + code.remark());
        }
    }

    private static void add(long spn, long fmi, String count, Findings found) {
        var wrong = outOfRange(spn, fmi);
        if (wrong.isPresent()) {
            found.problem(wrong.get());
        } else if (fmi < 0) {
            found.add(CodeScheme.J1939, "SPN " + spn, "No FMI given: any failure of this parameter. "
                    + SpnFmi.definer((int) spn));
        } else {
            long times = count == null ? SpnFmi.COUNT_NOT_AVAILABLE : number(count);
            boolean fitting = times <= SpnFmi.COUNT_NOT_AVAILABLE;
            var note = fitting ? "" : "A count goes from 0 to 126, here it is " + times + ": it is left out. ";
            var code = new SpnFmi((int) spn, (int) fmi, fitting ? (int) times : SpnFmi.COUNT_NOT_AVAILABLE);
            found.add(CodeScheme.J1939, code.text(), note + code.remark());
            if (!fitting) {
                found.problem(note.strip());
            }
        }
    }

    private static void fmiAlone(long fmi, Findings found) {
        found.problem(outOfRange(0, fmi).orElseGet(() -> "FMI " + fmi + " means: " + FailureMode.words((int) fmi)
                + ". The number of the SPN is missing" + EXAMPLE + "."));
    }

    private static Optional<String> outOfRange(long spn, long fmi) {
        if (spn > SpnFmi.HIGHEST_SPN) {
            return Optional.of("An SPN goes from 0 to 524287, here it is " + spn + ": look at the code again.");
        }
        return fmi > SpnFmi.HIGHEST_FMI
                ? Optional.of("An FMI goes from 0 to 31, here it is " + fmi + ": look at the code again.")
                : Optional.empty();
    }

    static long number(String digits) {
        if (digits.startsWith("0X")) {
            return Long.parseLong(digits.substring(2), 16);
        }
        return digits.endsWith("H") ? Long.parseLong(digits.substring(0, digits.length() - 1), 16)
                : Long.parseLong(digits);
    }
}
