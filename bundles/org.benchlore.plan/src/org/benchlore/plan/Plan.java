// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Unit;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Solution;

/**
 * One plan for all that is to be done, from where the machine stands.
 *
 * @param request what was asked
 * @param machine the machine
 * @param unit the unit, if one was named
 * @param procedures procedures asked for
 * @param problem what the search was given
 * @param solution what the search chose, with its gap
 * @param items everything in order
 * @param times how long it takes
 * @param parts parts
 * @param supplies supplies
 * @param tools tools
 * @param lacks people and qualifications that are missing, a sentence each
 * @param price what the customer pays
 * @param visits what separate visits would take, where there is more than one procedure
 * @param first what changed against the plan from the closed machine, where it is not closed any more
 * @param remarks what somebody must know, a sentence each
 * @param needsSenior whether a senior must sign it: a merged plan is a strip that nobody reviewed
 */
public record Plan(PlanRequest request, Machine machine, Optional<Unit> unit, List<Procedure> procedures,
        PlanProblem problem, Solution solution, List<PlanItem> items, PlanTimes times, List<PartLine> parts,
        List<SupplyLine> supplies, List<ToolLine> tools, List<String> lacks, PlanPrice price, Optional<Visits> visits,
        Optional<FirstPlan> first, List<String> remarks, boolean needsSenior) {

    /** Items of some part of the job. */
    public List<PlanItem> items(PlanItem.Part part) {
        return items.stream().filter(item -> item.part() == part).toList();
    }

    /** Accesses that are open when everything else is: opened and open at the start, each once. */
    public List<String> opened() {
        return java.util.stream.Stream.concat(problem.open().stream(), solution.openings().stream()).distinct().toList();
    }

    Plan with(Optional<Visits> separate, Optional<FirstPlan> before) {
        return new Plan(request, machine, unit, procedures, problem, solution, items, times, parts, supplies, tools, lacks,
                price, separate, before, remarks, needsSenior);
    }

    /**
     * Tells whether something is planned from the hours of the whole job, of which nobody can say what it shares.
     *
     * @return true if so
     */
    public boolean hasWholeJobs() {
        return items.stream().anyMatch(PlanRemarks::isWholeJob);
    }
}
