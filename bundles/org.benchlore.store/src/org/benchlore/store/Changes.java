// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Set;
import java.util.TreeSet;

/**
 * What a refresh or a save changed, as paths below the library.
 *
 * @param changed files that are new or have other content
 * @param removed files that are gone
 */
public record Changes(Set<String> changed, Set<String> removed) {

    static Changes between(Catalogue before, Catalogue after) {
        var changed = new TreeSet<String>();
        for (var entry : after.entries()) {
            var same = before.entry(entry.path()).filter(old -> old.hash().equals(entry.hash())).isPresent();
            if (!same) {
                changed.add(entry.path());
            }
        }
        var removed = new TreeSet<>(before.asMap().keySet());
        removed.removeAll(after.asMap().keySet());
        return new Changes(changed, removed);
    }

    /**
     * Tells whether nothing changed.
     *
     * @return true if both sets are empty
     */
    public boolean isEmpty() {
        return changed.isEmpty() && removed.isEmpty();
    }
}
