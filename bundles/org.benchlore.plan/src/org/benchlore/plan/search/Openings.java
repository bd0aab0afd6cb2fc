// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Small questions about a problem that several classes ask. */
final class Openings {

    private Openings() {
    }

    static Set<Integer> numbers(Net net, List<String> ids) throws PlanException {
        var found = new TreeSet<Integer>();
        for (var id : ids) {
            found.add(net.number(id, "what is open"));
        }
        return found;
    }

    static List<int[]> allNeeds(PlanProblem problem, Net net) throws PlanException {
        var found = new ArrayList<int[]>();
        for (var target : problem.targets()) {
            for (var option : target.options()) {
                found.addAll(net.openers(option.needs(), target.id()));
            }
        }
        return found;
    }

    /** Which target must be done before which, over any number of steps. */
    static boolean[][] order(List<Target> targets) {
        int count = targets.size();
        var ids = targets.stream().map(Target::id).toList();
        var isBefore = new boolean[count][count];
        for (int late = 0; late < count; late++) {
            for (var id : targets.get(late).before()) {
                if (ids.contains(id)) {
                    isBefore[ids.indexOf(id)][late] = true;
                }
            }
        }
        for (int via = 0; via < count; via++) {
            for (int early = 0; early < count; early++) {
                for (int late = 0; late < count; late++) {
                    isBefore[early][late] |= isBefore[early][via] && isBefore[via][late];
                }
            }
        }
        return isBefore;
    }

    /** How many targets may have to be done with something open: no plan needs more sittings. */
    static int mostSittings(PlanProblem problem) {
        return (int) problem.targets().stream()
                .filter(target -> target.options().stream().anyMatch(option -> !option.needs().isEmpty())).count();
    }

    static boolean hasFoes(Net net, Set<Integer> open) {
        return IntStream.range(0, net.size()).filter(open::contains)
                .anyMatch(one -> IntStream.rangeClosed(0, one).filter(open::contains).anyMatch(other -> net.areFoes(one, other)));
    }
}
