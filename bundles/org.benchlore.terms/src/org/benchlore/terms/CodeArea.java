// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/** The area of the machine that the letter, and for P0 codes the second digit, stands for. From memory. */
public final class CodeArea {
    private CodeArea() {
    }

    /** The area of a canonical two- or three-byte code, such as {@code transmission} for {@code P0741}. */
    public static String words(String code) {
        return switch (code.charAt(0)) {
            case 'P' -> code.charAt(1) == '0' ? powertrain(code.charAt(2)) : "engine or transmission";
            case 'C' -> "chassis";
            case 'B' -> "body";
            default -> "network";
        };
    }

    static String sentence(String code) {
        return "Area: " + words(code) + ". " + CodeAuthority.ofLetterCode(code).sentence();
    }

    private static String powertrain(char digit) {
        return switch (digit) {
            case '0' -> "fuel, air and additional emission control";
            case '1' -> "fuel and air metering";
            case '2' -> "fuel injection";
            case '3' -> "ignition";
            case '4' -> "emission control";
            case '5' -> "speed and idle control";
            case '6' -> "control unit and its outputs";
            case '7', '8', '9' -> "transmission";
            case 'A' -> "hybrid drive";
            default -> "engine or transmission";
        };
    }
}
