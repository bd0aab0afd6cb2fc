// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.order;

import java.util.Set;

/**
 * A check that can be made.
 *
 * @param id what it is called
 * @param minutes its own time, above 0
 * @param opens what must be open for it
 * @param finds faults it finds if they are there
 * @param urgent whether it comes before all that are not, since a fault it finds can hurt somebody
 */
public record Check(String id, double minutes, Set<String> opens, Set<String> finds, boolean urgent) {

    /** Copies the sets and refuses a check that takes no time. */
    public Check {
        opens = Set.copyOf(opens);
        finds = Set.copyOf(finds);
        if (!(minutes > 0)) {
            throw new IllegalArgumentException(id + " takes no time: give minutes above 0");
        }
    }
}
