// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An open brace with the letters behind it, up to the cursor: the beginning of the name of another element in a text.
 *
 * @param start where the brace stands
 * @param letters what is behind it
 */
record LinkPiece(int start, String letters) {

    private static final Pattern FORM = Pattern.compile("\\{([^{}\\n\\r]{0,60})$");
    /** The kind that may stand there already. */
    private static final Pattern KIND = Pattern.compile("^[a-z]{1,30}:\\s*");

    /** Finds what is being written at a place in a text. */
    static Optional<LinkPiece> at(String text, int cursor) {
        var matcher = FORM.matcher(text.substring(0, Math.min(cursor, text.length())));
        return matcher.find() ? Optional.of(new LinkPiece(matcher.start(), matcher.group(1))) : Optional.empty();
    }

    /** What is looked for. */
    String wanted() {
        return KIND.matcher(letters).replaceFirst("");
    }

    /** How far the piece reaches. */
    int end() {
        return start + 1 + letters.length();
    }
}
