// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was found.
 *
 * @param hits the best hits, best first: those that hold every word, then those that hold some
 * @param total how many hold every word; where none does, how many hold some
 * @param isLeast whether there may be more than that: while typing, or where counting would have taken too long
 * @param counts for narrowing: what there is, how often, the most frequent first; empty unless asked for
 * @param meant the text as it was probably meant, where a word is in no element and one nearly so is
 */
public record Results(List<Hit> hits, long total, boolean isLeast, Map<Facet, List<Count>> counts,
        Optional<String> meant) {

    /** Nothing found. */
    public static final Results NONE = new Results(List.of(), 0, false, Map.of(), Optional.empty());

    /**
     * How many hits there are of one sort.
     *
     * @param value what a query is narrowed to
     * @param hits how many
     */
    public record Count(String value, long hits) {
    }

    /**
     * Tells whether nothing held every word.
     *
     * @return true if all hits hold only some of the words
     */
    public boolean loosened() {
        return !hits.isEmpty() && !hits.get(0).whole();
    }
}
