// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Reach;
import org.benchlore.plan.search.Target;

/**
 * Tells what is done last of all with something still open: a leak is looked for from the pit, before the machine is driven
 * off it, although what was opened for the work is closed by then.
 */
final class StillOpen {

    private final PlanProblem problem;
    private final PlanInputs inputs;
    private final Reach reach;

    StillOpen(PlanProblem problem, PlanInputs inputs) {
        this.problem = problem;
        this.inputs = inputs;
        this.reach = new Reach(problem);
    }

    /**
     * Tells whether something done after closing is to be done before one more access is closed.
     *
     * @param item something done after closing
     * @param access what would be closed next
     * @param open what is open, this access too
     * @return true if it needs that access, and everything that asks for it is closed
     */
    boolean isFor(PlanItem item, String access, List<String> open) {
        var needs = inputs.needs(item);
        var without = new HashSet<>(open);
        without.remove(access);
        return !needs.isEmpty() && reach.isMet(needs, Set.copyOf(open)) && !reach.isMet(needs, without)
                && problem.accesses().stream().noneMatch(other -> other.closing().contains(item.id()) && open.contains(other.id()))
                && problem.targets().stream().noneMatch(target -> asks(target, item) && needs(target, open));
    }

    private boolean asks(Target target, PlanItem item) {
        return inputs.book().ids(inputs.book().known(target.id()).getAfterClosing()).contains(item.id());
    }

    /** Whether what a target was done in is still open. */
    private static boolean needs(Target target, List<String> open) {
        return target.options().stream().flatMap(option -> option.needs().stream()).flatMap(List::stream).anyMatch(open::contains);
    }
}
