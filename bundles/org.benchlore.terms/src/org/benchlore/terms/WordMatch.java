// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.List;

/**
 * A run of query words for which other words are known.
 *
 * @param start   index of the run's first word, from 0
 * @param length  number of words in the run, 1 to 4
 * @param phrases what else may be searched for, likeliest first, none equal to the run; each a word or a phrase in its
 *                base form ('tire' for 'tyres'), as it stands in the list or the library
 */
public record WordMatch(int start, int length, List<String> phrases) {
    public WordMatch {
        phrases = List.copyOf(phrases);
    }
}
