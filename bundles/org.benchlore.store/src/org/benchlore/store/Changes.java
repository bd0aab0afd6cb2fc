// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a refresh or a save changed, as paths below the library.
 *
 * @param changed files that are new or have other content
 * @param removed files that are gone
 * @param renamed those of them by whose names others are found: they are new, gone, or called otherwise
 */
public record Changes(Set<String> changed, Set<String> removed, Set<String> renamed) {

    /** What a save of one file changed. */
    static Changes of(Catalogue before, Catalogue after, String path) {
        return isSame(before, after.entry(path).orElseThrow()) ? new Changes(Set.of(), Set.of(), Set.of())
                : new Changes(Set.of(path), Set.of(), isRenamed(before, after, path) ? Set.of(path) : Set.of());
    }

    private static boolean isSame(Catalogue before, Catalogue.Entry entry) {
        return before.entry(entry.path()).filter(old -> old.hash().equals(entry.hash())).isPresent();
    }

    private static boolean isRenamed(Catalogue before, Catalogue after, String path) {
        return !naming(before, path).equals(naming(after, path));
    }

    private static Optional<Integer> naming(Catalogue catalogue, String path) {
        return catalogue.entry(path).flatMap(Catalogue.Entry::row).map(Row::naming);
    }

    static Changes between(Catalogue before, Catalogue after) {
        var changed = new TreeSet<String>();
        for (var entry : after.entries()) {
            if (!isSame(before, entry)) {
                changed.add(entry.path());
            }
        }
        var removed = new TreeSet<>(before.asMap().keySet());
        removed.removeAll(after.asMap().keySet());
        var renamed = new TreeSet<>(removed);
        changed.stream().filter(path -> isRenamed(before, after, path)).forEach(renamed::add);
        return new Changes(changed, removed, renamed);
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
