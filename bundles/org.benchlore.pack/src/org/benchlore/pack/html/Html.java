// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

/** Escapes words for HTML and for JavaScript. */
final class Html {

    private Html() {
    }

    static String text(String words) {
        return words == null ? "" : words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** A JavaScript text in quotes; no sign of it can end the script or the line. */
    static String script(String words) {
        var text = new StringBuilder("\"");
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            if (letter < ' ' || letter == '"' || letter == '\\' || letter == '<' || letter == '>' || letter == '\u2028'
                    || letter == '\u2029') {
                text.append(String.format("\\u%04x", (int) letter));
            } else {
                text.append(letter);
            }
        }
        return text.append('"').toString();
    }

    /** A text within quotes of a style sheet. */
    static String style(String words) {
        return words.replaceAll("[\\\\\"<>\\p{Cntrl}]", " ");
    }
}
