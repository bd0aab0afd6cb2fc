// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/** Who defines what a code means, as its number shows. From memory of SAE J2012, ISO 15031-6 and SAE J1939. */
public enum CodeAuthority {
    NOT_KNOWN("It is not known who defines this code."),
    STANDARD("The standard defines it, so it means the same on every make."),
    RESERVED("The standard keeps this range in reserve."),
    MAKER("The maker defines it, so the same code means something else on another make.");

    private static final int FIRST_MAKER_SPN = 520192;
    private final String sentence;

    CodeAuthority(String sentence) {
        this.sentence = sentence;
    }

    /** One plain sentence. */
    public String sentence() {
        return sentence;
    }

    /** Who defines the code of this key. */
    public static CodeAuthority of(CodeKey key) {
        return switch (key.scheme()) {
            case J2012, ISO14229 -> ofLetterCode(key.text());
            case J1939 -> ofSpnText(key.baseForm());
            case MAKER -> MAKER;
            case NOT_RECORDED -> NOT_KNOWN;
        };
    }

    static CodeAuthority ofSpn(int spn) {
        return spn >= FIRST_MAKER_SPN ? MAKER : STANDARD;
    }

    private static CodeAuthority ofSpnText(String base) {
        var digits = base.startsWith("spn") ? base.substring(3) : "";
        boolean number = Hex.isDecimal(digits) && digits.length() <= 6;
        return number ? ofSpn(Integer.parseInt(digits)) : NOT_KNOWN;
    }

    static CodeAuthority ofLetterCode(String text) {
        if (text.length() < 3) {
            return NOT_KNOWN;
        }
        boolean powertrain = text.charAt(0) == 'P';
        return switch (text.charAt(1)) {
            case '0' -> STANDARD;
            case '1' -> MAKER;
            case '2' -> powertrain ? STANDARD : MAKER;
            case '3' -> powertrain ? ofP3(text.charAt(2)) : RESERVED;
            default -> NOT_KNOWN;
        };
    }

    /** P30 to P33 are the makers', P34 to P3F the standard's. */
    private static CodeAuthority ofP3(char next) {
        return next >= '0' && next <= '3' ? MAKER : STANDARD;
    }
}
