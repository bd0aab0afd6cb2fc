// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;

import org.benchlore.store.Catalogue;

/**
 * The facts of the whole library.
 *
 * @param catalogue the facts of every file
 * @param hazardsOf for each procedure's path the hazards it carries, as written: kind, consequence, avoidance
 * @param carriers for each hazard the paths of the procedures that carry it
 * @param procedures how many procedures there are
 */
public record LibraryFacts(Catalogue catalogue, Map<String, Set<String>> hazardsOf, Map<String, NavigableSet<String>> carriers,
        long procedures) {
}
