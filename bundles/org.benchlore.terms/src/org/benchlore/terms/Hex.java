// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Hex digits and bytes in text. */
final class Hex {
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

    static boolean isHexDigit(int c) {
        return c >= '0' && c <= '9' || c >= 'A' && c <= 'F';
    }

    /** Bytes as {@code 08 41 64}. */
    static String bytes(int... values) {
        return IntStream.of(values).mapToObj(value -> String.format(Locale.ROOT, "%02X", value & 0xFF))
                .collect(Collectors.joining(" "));
    }

    /** ASCII letters and digits only, in lower case. */
    static String stripped(String text) {
        var kept = new StringBuilder(text.length());
        text.chars().filter(c -> c < 128 && Character.isLetterOrDigit(c))
                .forEach(c -> kept.append(Character.toLowerCase((char) c)));
        return kept.toString();
    }
}
