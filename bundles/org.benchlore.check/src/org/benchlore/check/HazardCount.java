// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.util.HashSet;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;

import org.benchlore.model.Hazard;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;

/** Counts in which procedures the same hazard stands word for word. Safe for several threads. */
final class HazardCount {

    private final Map<String, Set<String>> hazardsOf = new ConcurrentHashMap<>();
    private final Map<String, NavigableSet<String>> carriers = new ConcurrentHashMap<>();

    /** Takes in a procedure; one that is gone has no hazards. Returns the first carriers before and after. */
    Set<String> put(String path, Set<String> now) {
        var before = now.isEmpty() ? hazardsOf.remove(path) : hazardsOf.put(path, now);
        var touched = new HashSet<String>();
        if (before != null && before.equals(now)) {
            return touched;
        }
        for (var gone : before == null ? Set.<String>of() : before) {
            first(gone, touched);
            carriers.getOrDefault(gone, new TreeSet<>()).remove(path);
            first(gone, touched);
        }
        for (var come : now) {
            first(come, touched);
            carriers.computeIfAbsent(come, key -> new ConcurrentSkipListSet<>()).add(path);
            first(come, touched);
        }
        return touched;
    }

    private void first(String hazard, Set<String> touched) {
        var paths = carriers.get(hazard);
        if (paths != null && !paths.isEmpty()) {
            touched.add(paths.first());
        }
    }

    static Set<String> of(Subject subject) {
        if (subject.procedure().isEmpty()) {
            return Set.of();
        }
        var said = new HashSet<String>();
        for (var hazard : subject.all(Hazard.class)) {
            said.add(hazard.getKind() + "\n" + hazard.getConsequence() + "\n" + hazard.getAvoidance());
        }
        return said;
    }

    LibraryFacts facts(Catalogue catalogue) {
        return new LibraryFacts(catalogue, hazardsOf, carriers, catalogue.rows(Kind.PROCEDURE).count());
    }
}
