// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Brings an entered text into upper-case ASCII as far as it goes: look-alike letters, dashes, spaces, lead words. */
final class CodeText {
    static final int LONGEST = 64;
    private static final String LOOKS_LIKE = "АВСЕНОРТХΑΒΕΗΙΟΡΤΧ–—‑−‐";
    private static final String MEANT = "ABCEHOPTXABEHIOPTX-----";
    private static final Pattern LEAD = Pattern.compile("^(?:FAULT CODE|FAULT|CODE|DTC|ERROR)[ :#=.-]{1,3}(?=.*[0-9])");

    private CodeText() {
    }

    /** Letters and dashes that only look like ASCII are made ASCII; case and length stay. */
    static String ascii(String text) {
        var plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int index = LOOKS_LIKE.indexOf(c);
            plain.append(index >= 0 ? MEANT.charAt(index) : Character.isSpaceChar(c) ? ' ' : c);
        }
        return plain.toString();
    }

    static String normal(String entered) {
        var upper = Normalizer.normalize(entered, Normalizer.Form.NFKC).toUpperCase(Locale.ROOT);
        var spaced = ascii(upper).replaceAll("\\s+", " ").strip();
        return LEAD.matcher(unwrapped(spaced)).replaceFirst("").strip();
    }

    private static String unwrapped(String text) {
        var inside = text;
        if (inside.length() > 2 && "([\"'".indexOf(inside.charAt(0)) >= 0
                && ")]\"'".indexOf(inside.charAt(inside.length() - 1)) >= 0) {
            inside = inside.substring(1, inside.length() - 1).strip();
        }
        return inside.endsWith(".") || inside.endsWith(",") || inside.endsWith(";")
                ? inside.substring(0, inside.length() - 1).strip() : inside;
    }
}
