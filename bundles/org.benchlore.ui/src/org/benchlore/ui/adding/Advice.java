// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.Locale;
import java.util.Optional;

import org.benchlore.evidence.decide.Option;
import org.benchlore.page.AddingWords;

/**
 * What a person advises about one proposal.
 *
 * @param way the way out, if one was chosen
 * @param because why, in the person's words
 */
record Advice(Optional<Option> way, String because) {

    static final Advice NONE = new Advice(Optional.empty(), "");

    /** The line for the customer; empty words where no way was chosen. */
    String line(String title) {
        return way.map(it -> title + ": " + AddingWords.way(it).toLowerCase(Locale.ROOT)
                + (because.isBlank() ? "" : ", because " + because.strip()) + ".").orElse("");
    }
}
