// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Optional;

import org.benchlore.model.Kind;

/**
 * What is looked for.
 *
 * @param text what was typed, anything at all
 * @param kind only elements of this kind
 * @param machine only elements for this machine, by its id, and those that name no machine
 * @param limit greatest number of hits, at least 1
 */
public record Query(String text, Optional<Kind> kind, Optional<String> machine, int limit) {

    /** Most hits that a query without a limit of its own returns. */
    public static final int USUAL_LIMIT = 50;

    /** Checks the limit. */
    public Query {
        if (limit < 1) {
            throw new IllegalArgumentException("The limit must be 1 or more, not " + limit);
        }
    }

    /**
     * Makes a query over everything.
     *
     * @param text what was typed
     * @return the query
     */
    public static Query of(String text) {
        return new Query(text, Optional.empty(), Optional.empty(), USUAL_LIMIT);
    }
}
