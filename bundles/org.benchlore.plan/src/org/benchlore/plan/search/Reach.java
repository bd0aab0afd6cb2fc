// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What holds while some accesses are open, and what can be opened then. */
public final class Reach {

    private final Map<String, AccessNode> accesses = new HashMap<>();

    /** Looks at the accesses of a problem. */
    public Reach(PlanProblem problem) {
        problem.accesses().forEach(access -> accesses.put(access.id(), access));
    }

    /** Accesses that hold: those that are open and those they cover. */
    public Set<String> holding(Set<String> open) {
        var found = new HashSet<String>();
        var left = new ArrayList<>(open);
        while (!left.isEmpty()) {
            var id = left.remove(left.size() - 1);
            if (found.add(id) && accesses.containsKey(id)) {
                left.addAll(accesses.get(id).covers());
            }
        }
        return found;
    }

    /** Whether every need has an access that holds. */
    public boolean isMet(List<List<String>> needs, Set<String> open) {
        var holding = holding(open);
        return needs.stream().allMatch(need -> need.stream().anyMatch(holding::contains));
    }

    /** Whether an access can be opened now: its needs hold, and nothing open is not with it. */
    public boolean canOpen(String id, Set<String> open) {
        var next = new HashSet<>(open);
        next.add(id);
        var holding = holding(next);
        return isMet(accesses.get(id).needs(), open) && holding.stream().noneMatch(one ->
                accesses.containsKey(one) && accesses.get(one).notWith().stream().anyMatch(holding::contains));
    }

    /**
     * What of that which is to be opened leads to some needs.
     *
     * @param needs needs, of each any one will do
     * @param toOpen what is to be opened anyway, in an order in which it can be opened
     * @param open what is open now
     * @return ids, of several that meet a need the first; nothing for a need that is met
     */
    public Set<String> towards(List<List<String>> needs, List<String> toOpen, Set<String> open) {
        var found = new HashSet<String>();
        var left = new ArrayList<>(needs);
        while (!left.isEmpty()) {
            var need = left.remove(left.size() - 1);
            if (!isMet(List.of(need), open)) {
                toOpen.stream().filter(id -> isMet(List.of(need), Set.of(id))).findFirst().filter(found::add)
                        .ifPresent(id -> left.addAll(accesses.get(id).needs()));
            }
        }
        return found;
    }
}
