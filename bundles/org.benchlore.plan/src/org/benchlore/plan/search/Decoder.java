// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads a plan out of chosen nodes. */
final class Decoder {

    private final PlanProblem problem;
    private final Net net;

    Decoder(PlanProblem problem, Net net) {
        this.problem = problem;
        this.net = net;
    }

    Solution decode(Expansion expansion, boolean[] chosen, long cost, long bound, long branches) throws PlanException {
        var sittings = new ArrayList<Sitting>();
        Set<Integer> open = Openings.numbers(net, problem.open());
        for (int number = 0; number < expansion.sittings(); number++) {
            var kept = kept(open, expansion.kept(chosen, number), expansion.open(chosen, number));
            var more = new TreeSet<>(expansion.open(chosen, number));
            more.removeAll(kept);
            sittings.add(new Sitting(ids(net.opening(kept, Set.of())), ids(net.opening(more, kept)),
                    done(expansion, chosen, number)));
            open = new TreeSet<>(kept);
            open.addAll(more);
        }
        if (expansion.sittings() == 1 && sittings.get(0).done().isEmpty()) {
            sittings.clear();
        }
        return new Solution(List.copyOf(sittings), done(expansion, chosen, -1), expansion.closings(chosen), cost, bound,
                branches);
    }

    /** What stays open although nobody needs it: closing it later costs the same and nothing is opened twice. */
    private Set<Integer> kept(Set<Integer> before, Set<Integer> must, Set<Integer> open) throws PlanException {
        var kept = new TreeSet<>(must);
        for (int access : net.opening(before, Set.of())) {
            var next = new HashSet<>(kept);
            next.add(access);
            boolean stands = net.opening(next, Set.of()).size() == next.size();
            var all = new HashSet<>(open);
            all.addAll(next);
            if (stands && !Openings.hasFoes(net, all)) {
                kept.add(access);
            }
        }
        return kept;
    }

    private List<String> ids(List<Integer> numbers) {
        return numbers.stream().map(net::id).toList();
    }

    private TreeMap<String, String> done(Expansion expansion, boolean[] chosen, int sitting) {
        var done = new TreeMap<String, String>();
        expansion.ways().stream().filter(way -> way.sitting() == sitting && chosen[way.node()]).forEach(way -> {
            var target = problem.targets().get(way.target());
            done.putIfAbsent(target.id(), target.options().get(way.option()).id());
        });
        return done;
    }
}
