// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Picks codes out of running text. It is careful where a number may be something else: a failure type counts only if
 * it hangs on its code ('P0841 12 times' has none), two numbers with a stroke only if the first has five digits or
 * more ('1/2', '2019/12' are no codes). Every repetition is bounded, so the time is linear.
 */
final class CodeFinder {
    private static final String MARK = SpnForms.MARK;
    private static final String LETTER = "(?<letter>[PCBU][0-3][0-9A-F]{3})(?:[-:]?(?<type>[0-9A-F]{2}))?";
    private static final String SPN = "SPN" + MARK + "(?<spn>0X[0-9A-F]{1,6}|[0-9]{1,7})(?![0-9A-E])"
            + "(?:(?:[ ,;/:.-]{0,3}FMI" + MARK + "|[/:.-])(?<fmi>0X[0-9A-F]{1,2}|[0-9]{1,2})(?![0-9]))?";
    private static final String BACKWARD = "FMI" + MARK
            + "(?<fmi2>[0-9]{1,2})[ ,;/:-]{1,3}SPN" + MARK + "(?<spn2>[0-9]{1,7})(?![0-9])";
    private static final String BARE = "(?<spn3>[0-9]{5,6})/(?<fmi3>[0-9]{1,2})";
    private static final String NAMED = "(?:CODES?|DTCS?)[ :#]{1,2}(?<named>[0-9A-F]{4,6})(?![/.,][0-9])";
    private static final String MARKED = "(?:0X|\\$)(?<marked>[0-9A-F]{4,8})";
    private static final Pattern CODE = Pattern.compile("(?<![0-9A-Z])(?:" + String.join("|",
            LETTER, SPN, BACKWARD, BARE, NAMED, MARKED) + ")(?![0-9A-Z])");

    /** Most texts hold nothing that could be one, which is told in a tenth of the time. */
    private static final Pattern MAY_HOLD_ONE = Pattern.compile("[\\p{Nd}$]|(?i:CODE|DTC)");

    private CodeFinder() {
    }

    static List<CodeKey> findIn(String freeText) {
        if (!MAY_HOLD_ONE.matcher(freeText).find()) {
            return List.of();
        }
        var found = new LinkedHashSet<CodeKey>();
        var matcher = CODE.matcher(CodeText.joined(CodeText.ascii(freeText.toUpperCase(Locale.ROOT))));
        while (matcher.find()) {
            add(matcher, found);
        }
        return List.copyOf(found);
    }

    private static void add(Matcher matcher, Set<CodeKey> found) {
        if (matcher.group("letter") != null) {
            found.add(letterCode(TwoByteCode.of(matcher.group("letter")), matcher.group("type")));
        } else if (matcher.group("spn") != null) {
            spn(matcher.group("spn"), matcher.group("fmi"), found);
        } else if (matcher.group("spn2") != null) {
            spn(matcher.group("spn2"), matcher.group("fmi2"), found);
        } else if (matcher.group("spn3") != null) {
            spn(matcher.group("spn3"), matcher.group("fmi3"), found);
        } else {
            var maker = matcher.group("named") != null ? matcher.group("named") : matcher.group("marked");
            if (Hex.isNumber(maker)) {
                found.add(new CodeKey(CodeScheme.MAKER, maker));
            }
        }
    }

    private static CodeKey letterCode(TwoByteCode base, String type) {
        return type == null ? base.key() : new ThreeByteCode(base, Integer.parseInt(type, 16)).key();
    }

    private static void spn(String spnDigits, String fmiDigits, Set<CodeKey> found) {
        long spn = SpnForms.number(spnDigits);
        long fmi = fmiDigits == null ? -1 : SpnForms.number(fmiDigits);
        if (spn <= SpnFmi.HIGHEST_SPN && fmi <= SpnFmi.HIGHEST_FMI) {
            var text = fmi < 0 ? "SPN " + spn : "SPN " + spn + " FMI " + fmi;
            found.add(new CodeKey(CodeScheme.J1939, text));
        }
    }
}
