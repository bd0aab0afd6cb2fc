// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/** The numbering scheme of a fault code. The names are those of the library's file format. */
public enum CodeScheme {
    /** Nobody has said which scheme it is. */
    NOT_RECORDED("scheme not recorded"),
    /** Letter and four digits, two bytes: SAE J2012, ISO 15031-6. */
    J2012("two-byte code (SAE J2012, ISO 15031-6)"),
    /** Letter, four digits and a failure type, three bytes: ISO 14229. */
    ISO14229("three-byte code with failure type (ISO 14229)"),
    /** Suspect parameter number and failure mode identifier: SAE J1939-73. */
    J1939("SPN and FMI (SAE J1939)"),
    /** The maker's own number, hex or decimal, as the maker writes it. */
    MAKER("maker's own code");

    private final String words;

    CodeScheme(String words) {
        this.words = words;
    }

    /** The scheme in plain words. */
    public String words() {
        return words;
    }
}
