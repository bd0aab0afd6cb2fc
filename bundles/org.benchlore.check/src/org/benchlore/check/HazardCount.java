// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.HashSet;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;

import org.benchlore.model.Hazard;
import org.benchlore.store.Catalogue;

/** Counts in which procedures the same hazard stands word for word. Safe for several threads. */
final class HazardCount {

    private final Map<String, Set<String>> hazardsOf = new ConcurrentHashMap<>();
    private final Map<String, NavigableSet<String>> carriers = new ConcurrentHashMap<>();

    /**
     * Takes in what a file says now.
     *
     * @param path path of the file
     * @param said the hazards of a procedure; empty for every other file, and for one that is gone
     * @return the first carriers of the hazards before and after
     */
    Set<String> put(String path, Optional<Set<String>> said) {
        var now = said.orElse(Set.of());
        var known = said.isPresent() ? hazardsOf.put(path, now) : hazardsOf.remove(path);
        var before = known == null ? Set.<String>of() : known;
        var touched = new HashSet<String>();
        for (var gone : without(before, now)) {
            first(gone, touched);
            carriers.getOrDefault(gone, new TreeSet<>()).remove(path);
            first(gone, touched);
        }
        for (var come : without(now, before)) {
            first(come, touched);
            carriers.computeIfAbsent(come, key -> new ConcurrentSkipListSet<>()).add(path);
            first(come, touched);
        }
        return touched;
    }

    private static Set<String> without(Set<String> these, Set<String> those) {
        var rest = new HashSet<>(these);
        rest.removeAll(those);
        return rest;
    }

    private void first(String hazard, Set<String> touched) {
        var paths = carriers.get(hazard);
        if (paths != null && !paths.isEmpty()) {
            touched.add(paths.first());
        }
    }

    static Optional<Set<String>> of(Subject subject) {
        if (subject.procedure().isEmpty()) {
            return Optional.empty();
        }
        var said = new HashSet<String>();
        for (var hazard : subject.all(Hazard.class)) {
            said.add(hazard.getKind() + "\n" + hazard.getConsequence() + "\n" + hazard.getAvoidance());
        }
        return Optional.of(said);
    }

    LibraryFacts facts(Catalogue catalogue) {
        return new LibraryFacts(catalogue, hazardsOf, carriers, hazardsOf.size());
    }
}
