// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Hex digits and bytes in text. */
final class Hex {
    private static final Pattern CONSONANTS = Pattern.compile("[BCDF]{3}");

    private Hex() {
    }

    static boolean isHex(String text) {
        return !text.isEmpty() && text.chars().allMatch(Hex::isHexDigit);
    }

    static boolean isDecimal(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    static boolean hasDigit(String text) {
        return text.chars().anyMatch(c -> c >= '0' && c <= '9');
    }

    /** Whether hex digits are a number: a word of these letters, such as 'face', has no three consonants in a row. */
    static boolean isNumber(String hex) {
        return hasDigit(hex) || hex.length() >= 4 && CONSONANTS.matcher(hex).find();
    }

    static boolean isHexDigit(int c) {
        return c >= '0' && c <= '9' || c >= 'A' && c <= 'F';
    }

    /** Bytes as {@code 08 41 64}. */
    static String bytes(int... values) {
        return IntStream.of(values).mapToObj(value -> digits(value & 0xFF, 2)).collect(Collectors.joining(" "));
    }

    /** A number from 0 up in upper-case hex, with leading zeros up to the given length. */
    static String digits(int value, int length) {
        var hex = Integer.toHexString(value).toUpperCase(Locale.ROOT);
        return "0".repeat(Math.max(0, length - hex.length())) + hex;
    }

    /** ASCII letters and digits only, in lower case. */
    static String stripped(String text) {
        var kept = new StringBuilder(text.length());
        text.chars().filter(c -> c < 128 && Character.isLetterOrDigit(c))
                .forEach(c -> kept.append(Character.toLowerCase((char) c)));
        return kept.toString();
    }
}
