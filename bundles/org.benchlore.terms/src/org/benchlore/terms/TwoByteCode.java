// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/**
 * A letter and four digits in two bytes: the top two bits give the letter (P, C, B, U), the next two the first digit
 * (0 to 3), the rest three hex digits (ISO 15031-6, SAE J2012).
 */
public record TwoByteCode(int value) {
    private static final String LETTERS = "PCBU";
    private static final int DIGITS = 4;

    public TwoByteCode {
        if (value < 0 || value > 0xFFFF) {
            throw new IllegalArgumentException("A two-byte code goes from 0 to FFFF hex, for example 0841.");
        }
    }

    /**
     * From the canonical text, such as {@code P0841}.
     *
     * @throws IllegalArgumentException with a plain sentence if it is not one
     */
    public static TwoByteCode of(String text) {
        int letter = text.length() == DIGITS + 1 ? LETTERS.indexOf(text.charAt(0)) : -1;
        if (letter < 0 || !Hex.isHex(text.substring(1)) || text.charAt(1) > '3') {
            throw new IllegalArgumentException("A two-byte code is P, C, B or U, a digit 0 to 3 and three hex digits,"
                    + " for example P0841.");
        }
        return new TwoByteCode(letter << 14 | Integer.parseInt(text.substring(1), 16));
    }

    /** The canonical text, such as {@code P0841}. */
    public String text() {
        return LETTERS.charAt(value >> 14) + Hex.digits(value & 0x3FFF, DIGITS);
    }

    /** The two bytes, such as {@code 08 41}. */
    public String bytes() {
        return Hex.bytes(value >> 8, value);
    }

    CodeKey key() {
        return new CodeKey(CodeScheme.J2012, text());
    }

    /** What the number itself tells: who defines it, and the area where the numbering gives one. */
    String remark() {
        if (value == 0) {
            return "All zeros fill an empty place: no code is stored.";
        }
        return "Two bytes " + bytes() + ". " + CodeArea.sentence(text());
    }
}
