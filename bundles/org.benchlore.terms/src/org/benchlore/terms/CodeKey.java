// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;
import java.util.Objects;

/**
 * A fault code in its one canonical form: {@code P0841}, {@code P0841-64}, {@code SPN 520192 FMI 31}, or the maker's
 * own in upper case, {@code 4C17}.
 */
public record CodeKey(CodeScheme scheme, String text) {
    private static final int LETTER_CODE = 5;

    public CodeKey {
        Objects.requireNonNull(scheme);
        Objects.requireNonNull(text);
    }

    /** The key for a search index: lower case, no separators, {@code p084164} or {@code spn520192fmi31}. */
    public String indexForm() {
        return Hex.stripped(text);
    }

    /** As {@link #indexForm()} without the failure type or FMI: {@code p0841}, {@code spn520192}. */
    public String baseForm() {
        var index = indexForm();
        return switch (scheme) {
            case ISO14229 -> index.substring(0, Math.min(LETTER_CODE, index.length()));
            case J1939 -> index.contains("fmi") ? index.substring(0, index.indexOf("fmi")) : index;
            default -> index;
        };
    }

    /** The forms this code is written in, the canonical one first; {@link CodeReader} reads each back to this key. */
    public List<String> writtenForms() {
        return WrittenForms.of(this);
    }

    /** The canonical form. */
    @Override
    public String toString() {
        return text;
    }
}
