// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.Objects;

/**
 * What a rule is.
 *
 * @param id lower-case words with hyphens; suppressions name it, so it never changes
 * @param severity how grave its problems are
 * @param title what must be so, as a sentence without a full stop
 * @param why what happens otherwise, one sentence
 * @param reach what it cannot see, one sentence; empty where it sees all
 */
public record About(String id, Severity severity, String title, String why, String reach) {

    public About {
        Objects.requireNonNull(severity);
        if (!id.matches("[a-z]+(-[a-z]+)*") || title.isBlank() || why.isBlank()) {
            throw new IllegalArgumentException("A rule needs an id of lower-case words, a title and a reason: " + id);
        }
    }

    /** A rule that sees all there is to see. */
    public About(String id, Severity severity, String title, String why) {
        this(id, severity, title, why, "");
    }
}
