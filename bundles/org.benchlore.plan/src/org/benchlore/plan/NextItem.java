// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.MachineState;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.Option;
import org.benchlore.plan.search.PlanException;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Reach;
import org.benchlore.plan.search.Target;

/**
 * Chooses what comes next while a machine is opened. What needs the engine or must come before the strip is done with no more
 * open than it needs itself, so that nothing runs through what was opened for something else.
 */
final class NextItem {

    private final PlanProblem problem;
    private final PlanInputs inputs;
    private final ItemMaker maker;
    private final Reach reach;
    private final Set<String> open;

    NextItem(PlanProblem problem, PlanInputs inputs, ItemMaker maker, Set<String> open) {
        this.problem = problem;
        this.inputs = inputs;
        this.maker = maker;
        this.reach = new Reach(problem);
        this.open = open;
    }

    /**
     * Chooses.
     *
     * @param strips what is still to be opened, in an order in which it can be opened
     * @param toDo what is still to be done, with the way chosen
     * @param easiest which of several comes first
     */
    PlanItem of(List<PlanItem> strips, Map<String, String> toDo, Comparator<PlanItem> easiest) throws PlanException {
        var toOpen = strips.stream().map(PlanItem::id).toList();
        var within = new ArrayList<PlanItem>();
        var leads = new HashSet<String>();
        for (var target : problem.targets()) {
            if (toDo.containsKey(target.id()) && target.before().stream().noneMatch(toDo::containsKey)) {
                var needs = needs(target, toDo.get(target.id()));
                var work = work(target, toDo.get(target.id()));
                if (reach.isMet(needs, open)) {
                    within.add(work);
                } else if (isUrgent(work)) {
                    leads.addAll(reach.towards(needs, toOpen, open));
                }
            }
        }
        strips.stream().filter(NextItem::runs).forEach(strip -> leads.addAll(reach.towards(List.of(List.of(strip.id())), toOpen, open)));
        return Stream.concat(within.stream(), strips.stream().filter(strip -> reach.canOpen(strip.id(), open)))
                .min(Comparator.comparing((PlanItem item) -> isUrgent(item) ? 0 : leads.contains(item.id()) ? 1 : 2)
                        .thenComparing(easiest)).orElseThrow();
    }

    private PlanItem work(Target target, String way) throws PlanException {
        return maker.work(inputs.gates().contains(target.id()) ? Part.BEFORE : Part.WORK, target.id(), way);
    }

    private static List<List<String>> needs(Target target, String way) {
        return target.options().stream().filter(it -> it.id().equals(way)).map(Option::needs).findFirst().orElseThrow();
    }

    private static boolean isUrgent(PlanItem item) {
        return runs(item) || item.part() == Part.BEFORE;
    }

    /** What needs the engine comes before anything is taken apart, and so in the refit after it. */
    static boolean runs(PlanItem item) {
        return item.work().filter(work -> work.getStates().contains(MachineState.RUNNING)).isPresent();
    }
}
