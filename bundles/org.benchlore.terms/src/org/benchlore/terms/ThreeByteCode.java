// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/** A two-byte code with a third byte for the type of failure (ISO 14229-1): {@code P0841-64}. */
public record ThreeByteCode(TwoByteCode base, int failureType) {
    private static final int BASE_LENGTH = 5;

    public ThreeByteCode {
        if (failureType < 0 || failureType > 0xFF) {
            throw new IllegalArgumentException("A failure type goes from 0 to FF hex, for example 64.");
        }
    }

    /** From three bytes in one number, such as {@code 0x084164}. */
    public static ThreeByteCode of(int value) {
        if (value < 0 || value > 0xFFFFFF) {
            throw new IllegalArgumentException("A three-byte code goes from 0 to FFFFFF hex, for example 084164.");
        }
        return new ThreeByteCode(new TwoByteCode(value >> 8), value & 0xFF);
    }

    /**
     * From the canonical text, such as {@code P0841-64}.
     *
     * @throws IllegalArgumentException with a plain sentence if it is not one
     */
    public static ThreeByteCode of(String text) {
        boolean shaped = text.length() == BASE_LENGTH + 3 && text.charAt(BASE_LENGTH) == '-'
                && Hex.isHex(text.substring(BASE_LENGTH + 1));
        if (!shaped) {
            throw new IllegalArgumentException("A three-byte code is a two-byte code, a hyphen and two hex digits,"
                    + " for example P0841-64.");
        }
        return new ThreeByteCode(TwoByteCode.of(text.substring(0, BASE_LENGTH)),
                Integer.parseInt(text.substring(BASE_LENGTH + 1), 16));
    }

    /** The canonical text, such as {@code P0841-64}. */
    public String text() {
        return base.text() + "-" + Hex.digits(failureType, 2);
    }

    /** The three bytes, such as {@code 08 41 64}. */
    public String bytes() {
        return base.bytes() + " " + Hex.bytes(failureType);
    }

    CodeKey key() {
        return new CodeKey(CodeScheme.ISO14229, text());
    }

    String remark() {
        if (base.value() == 0 && failureType == 0) {
            return base.remark();
        }
        return "Three bytes " + bytes() + ". Failure type " + FailureType.sentence(failureType) + " "
                + CodeArea.sentence(base.text());
    }
}
