// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What is looked for.
 *
 * @param text what was typed, anything at all
 * @param narrowedTo what the hits must be, one value for a facet
 * @param limit greatest number of hits, at least 1
 * @param counted whether the total must be exact and the counts for narrowing be made: leave it off while typing
 */
public record Query(String text, Map<Facet, String> narrowedTo, int limit, boolean counted) {

    /** Most hits that a query without a limit of its own returns. */
    public static final int USUAL_LIMIT = 50;

    /** Checks the limit. */
    public Query {
        if (limit < 1) {
            throw new IllegalArgumentException("The limit must be 1 or more, not " + limit);
        }
        var copy = new EnumMap<Facet, String>(Facet.class);
        copy.putAll(narrowedTo);
        narrowedTo = Collections.unmodifiableMap(copy);
    }

    /**
     * Makes a query over everything, without counts.
     *
     * @param text what was typed
     * @return the query
     */
    public static Query of(String text) {
        return new Query(text, Map.of(), USUAL_LIMIT, false);
    }

    /**
     * Returns this query with exact total and counts.
     *
     * @return a query
     */
    public Query withCounts() {
        return new Query(text, narrowedTo, limit, true);
    }

    /**
     * Returns this query narrowed further, or no longer narrowed by a facet.
     *
     * @param facet a facet
     * @param value what it must be, or null for anything
     * @return a query
     */
    public Query narrowedTo(Facet facet, String value) {
        var next = new EnumMap<Facet, String>(Facet.class);
        next.putAll(narrowedTo);
        if (value == null) {
            next.remove(facet);
        } else {
            next.put(facet, value);
        }
        return new Query(text, next, limit, counted);
    }
}
