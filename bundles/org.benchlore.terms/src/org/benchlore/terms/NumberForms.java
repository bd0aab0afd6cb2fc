// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.regex.Pattern;

/**
 * Codes written as plain numbers: raw bytes such as {@code 08 41 64} or {@code 0x084164}, which may be two-byte,
 * three-byte (with status) or J1939 codes, and decimal numbers. The maker's own reading always stays possible.
 */
final class NumberForms {
    private static final Pattern MARKED = Pattern.compile("(?<![0-9A-Z])(?:0X|\\$)(?=[0-9A-F])");
    /** With a digit, or without a vowel: 'each' and 'beach' are words. */
    private static final Pattern HEX_WITH_H = Pattern.compile("(?:(?=.*[0-9])[0-9A-F]{1,8}|[BCDF]{2,8})H");
    private static final Pattern SEPARATED = Pattern.compile(
            "(?:[0-9A-F]{2}){1,4}(?:[ ,:-]{1,2}(?:[0-9A-F]{2}){1,4})+");
    private static final Pattern PAIRS = Pattern.compile("[0-9A-F]{2}(?:[./][0-9A-F]{2}){2,3}");
    private static final Pattern UNEVEN = Pattern.compile("[0-9A-F]{1,2}(?:[ :-][0-9A-F]{1,2}){2,}");
    private static final Pattern SINGLE = Pattern.compile("(?<![0-9A-F])[0-9A-F](?![0-9A-F])");
    private static final int FOUR_BYTES = 8;

    private NumberForms() {
    }

    static void read(String text, Findings found) {
        var digits = MARKED.matcher(text).replaceAll("");
        boolean marked = !digits.equals(text);
        if (HEX_WITH_H.matcher(digits).matches()) {
            digits = digits.substring(0, digits.length() - 1);
            marked = true;
        }
        if (SEPARATED.matcher(digits).matches() || PAIRS.matcher(digits).matches()) {
            digits = digits.replaceAll("[ ,:./-]", "");
            marked = true;
        }
        if (Hex.isHex(digits) && (marked || Hex.isNumber(digits))) {
            number(digits, marked, found);
        } else {
            explain(digits, found);
        }
    }

    private static void explain(String digits, Findings found) {
        var single = SINGLE.matcher(digits);
        if (Hex.isHex(digits) && digits.length() >= 4) {
            found.problem("Letters alone may be a word: if it is a hex number, write 0x in front, as in 0x"
                    + digits + ".");
        } else if (UNEVEN.matcher(digits).matches() && single.find()) {
            found.problem("Each byte has two hex digits, here '" + single.group()
                    + "' stands alone: look at the code again.");
        }
    }

    private static void number(String digits, boolean hexForSure, Findings found) {
        if (digits.length() > FOUR_BYTES) {
            found.problem("A code has at most four bytes, here are " + digits.length()
                    + " digits: enter one code at a time.");
            return;
        }
        bytes(digits, found);
        boolean decimal = !hexForSure && Hex.isDecimal(digits) && digits.charAt(0) != '0';
        MakerForms.hex(digits, decimal, found);
        if (decimal) {
            decimal(digits, found);
        }
    }

    private static void bytes(String digits, Findings found) {
        long value = Long.parseLong(digits, 16);
        switch (digits.length()) {
            case 4 -> twoBytes((int) value, found);
            case 6 -> threeBytes((int) value, found);
            case FOUR_BYTES -> fourBytes(value, found);
            default -> { }
        }
    }

    private static void twoBytes(int value, Findings found) {
        var code = new TwoByteCode(value);
        found.add(CodeScheme.J2012, code.text(), code.remark());
    }

    private static void threeBytes(int value, Findings found) {
        var code = ThreeByteCode.of(value);
        found.add(CodeScheme.ISO14229, code.text(), code.remark());
    }

    private static void fourBytes(long value, Findings found) {
        if (OldSpnOrder.applies(value)) {
            OldSpnOrder.read(value, found);
        } else {
            var code = SpnFmi.ofBytes(value);
            found.add(CodeScheme.J1939, code.text(), "Four bytes of J1939. " + code.remark());
        }
        var withStatus = ThreeByteCode.of((int) (value >> 8));
        found.add(CodeScheme.ISO14229, withStatus.text(), withStatus.remark() + " "
                + new StatusByte((int) value & 0xFF).sentence());
    }

    /** Some readers show the bytes as one decimal number. */
    private static void decimal(String digits, Findings found) {
        int value = Integer.parseInt(digits);
        if (digits.length() == 5 && value <= 0xFFFF) {
            var code = new TwoByteCode(value);
            found.add(CodeScheme.J2012, code.text(), "If the two bytes are shown as a decimal number. "
                    + code.remark());
        } else if (digits.length() > 6 && value <= 0xFFFFFF) {
            var code = ThreeByteCode.of(value);
            found.add(CodeScheme.ISO14229, code.text(), "If the three bytes are shown as a decimal number. "
                    + code.remark());
        }
        MakerForms.decimal(value, found);
    }
}
