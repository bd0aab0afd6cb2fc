// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * What is to be planned. The order of the lists, and the order within a need, means nothing: they are sorted by id.
 *
 * @param accesses accesses of the machine
 * @param targets what must be done
 * @param closings closing works that may be asked for
 * @param open accesses that are open at the start
 * @param due closing works that are due whatever is opened
 */
public record PlanProblem(List<AccessNode> accesses, List<Target> targets, List<ClosingWork> closings,
        List<String> open, List<String> due) {

    public PlanProblem {
        accesses = accesses.stream().map(PlanProblem::sorted).sorted(Comparator.comparing(AccessNode::id)).toList();
        targets = targets.stream().map(PlanProblem::sorted).sorted(Comparator.comparing(Target::id)).toList();
        closings = closings.stream().sorted(Comparator.comparing(ClosingWork::id)).toList();
        open = List.copyOf(new TreeSet<>(open));
        due = List.copyOf(new TreeSet<>(due));
    }

    private static AccessNode sorted(AccessNode access) {
        return new AccessNode(access.id(), access.strip(), access.refit(), needs(access.needs()), sorted(access.covers()),
                sorted(access.notWith()), sorted(access.closing()));
    }

    private static Target sorted(Target target) {
        return new Target(target.id(), target.options().stream().sorted(Comparator.comparing(Option::id))
                .map(option -> new Option(option.id(), option.cost(), needs(option.needs()))).toList(),
                sorted(target.before()), sorted(target.closing()));
    }

    private static List<List<String>> needs(List<List<String>> needs) {
        return needs.stream().map(PlanProblem::sorted).distinct().sorted(Comparator.comparing(need -> String.join(" ", need)))
                .toList();
    }

    private static List<String> sorted(List<String> ids) {
        return ids.stream().distinct().sorted().toList();
    }

    /** The same with other targets. */
    public PlanProblem with(List<Target> others) {
        return new PlanProblem(accesses, others, closings, open, due);
    }
}
