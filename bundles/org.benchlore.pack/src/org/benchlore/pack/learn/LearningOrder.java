// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Need;
import org.benchlore.model.Procedure;
import org.benchlore.model.Way;
import org.benchlore.store.Library;

/**
 * The order in which procedures are learned: what another one needs before, with or after it comes first; among those that
 * are ready, the one that needs the fewest accesses opened, then the least skill, then the title.
 */
final class LearningOrder {

    private static final int DEEPEST = 50;

    private final Library library;
    private final Map<Address, Integer> depths = new HashMap<>();

    LearningOrder(Library library) {
        this.library = library;
    }

    List<Procedure> order() {
        var all = new TreeMap<String, Procedure>();
        library.catalogue().rows(Kind.PROCEDURE).forEach(row -> library.top(row.id()).filter(Procedure.class::isInstance)
                .ifPresent(top -> all.put(row.id(), (Procedure) top)));
        var waiting = new ArrayList<>(all.values());
        waiting.sort(Comparator.comparingInt((Procedure one) -> depth(one)).thenComparing(Procedure::getSkill)
                .thenComparing(procedure -> String.valueOf(procedure.getTitle())).thenComparing(Procedure::getId));
        var ordered = new ArrayList<Procedure>();
        var known = new HashSet<String>();
        while (!waiting.isEmpty()) {
            // Where they ask for each other in a circle, the easiest begins.
            var next = waiting.stream().filter(procedure -> isReady(procedure, known, all.keySet())).findFirst().orElse(waiting.get(0));
            waiting.remove(next);
            known.add(next.getId());
            ordered.add(next);
        }
        return ordered;
    }

    private boolean isReady(Procedure procedure, Set<String> known, Set<String> all) {
        return needed(procedure).stream().allMatch(id -> known.contains(id) || !all.contains(id) || id.equals(procedure.getId()));
    }

    /** Ids of the procedures that one cannot be done without. */
    List<String> needed(Procedure procedure) {
        var found = new ArrayList<String>();
        for (var list : List.of(procedure.getBefore(), procedure.getIncludes(), procedure.getAfterClosing())) {
            list.forEach(one -> library.addressOf(one).map(Address::id).ifPresent(found::add));
        }
        return found.stream().distinct().toList();
    }

    /** How many accesses lie one behind the other on the easiest way. */
    int depth(Procedure procedure) {
        return procedure.getWays().stream().map(Way::getNeeds).mapToInt(needs -> depth(needs, 0)).min().orElse(0);
    }

    private int depth(List<Need> needs, int level) {
        return needs.stream().mapToInt(need -> need.getAnyOf().stream().mapToInt(access -> depth(access, level)).min().orElse(0))
                .max().orElse(0);
    }

    private int depth(Access reference, int level) {
        var address = library.addressOf(reference);
        if (level > DEEPEST || address.isEmpty()) {
            return 1;
        }
        var known = depths.get(address.get());
        if (known != null) {
            return known;
        }
        int depth = library.resolve(reference).filter(Access.class::isInstance).map(Access.class::cast)
                .map(access -> 1 + depth(access.getNeeds(), level + 1)).orElse(1);
        depths.put(address.get(), depth);
        return depth;
    }

}
