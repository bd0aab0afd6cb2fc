// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;

/**
 * What was found.
 *
 * @param hits the best hits, best first
 * @param total how many there are in all
 * @param loosened true if nothing held every word, so that these hold only some of them
 */
public record Results(List<Hit> hits, long total, boolean loosened) {

    /** Nothing found. */
    public static final Results NONE = new Results(List.of(), 0, false);
}
