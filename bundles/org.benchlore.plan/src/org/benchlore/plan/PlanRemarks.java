// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.model.Procedure;
import org.benchlore.model.VerificationKind;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Solution;

/** What somebody must know about a plan before they follow it, a sentence each. */
final class PlanRemarks {

    private final PlanProblem problem;
    private final Solution solution;
    private final PlanInputs inputs;
    private final List<String> remarks = new ArrayList<>();

    PlanRemarks(PlanProblem problem, Solution solution, PlanInputs inputs) {
        this.problem = problem;
        this.solution = solution;
        this.inputs = inputs;
    }

    List<String> of(List<PlanItem> items) {
        remarks.addAll(inputs.remarks());
        if (!solution.isExact()) {
            remarks.add("The search was cut off: a cheaper plan could be cheaper by at most "
                    + BigDecimal.valueOf(solution.gap(), 2).toPlainString() + ".");
        }
        wholeJobs(items);
        again(items);
        late(items);
        contradictions(items);
        unwritten(items);
        proofs(items);
        return List.copyOf(remarks);
    }

    private void wholeJobs(List<PlanItem> items) {
        for (var item : items) {
            if (item.owner() instanceof Procedure procedure && item.proof().isEmpty()
                    && WorkFacts.isByWholeJob(item.work().orElse(null), procedure)) {
                remarks.add("'" + item.title() + "' is planned from the hours of the whole job, strip and refit in them: "
                        + (problem.accesses().isEmpty() ? "no accesses are written down for this machine."
                                : "its own time is not written down.") + " What shares a strip is not seen.");
            }
        }
    }

    private void again(List<PlanItem> items) {
        items.stream().filter(item -> item.part() == Part.STRIP && item.isAgain()).map(PlanItem::id).distinct().forEach(id -> {
            var others = problem.accesses().stream().filter(access -> access.id().equals(id) || access.notWith().contains(id))
                    .flatMap(access -> access.notWith().stream().filter(other -> !other.equals(id)))
                    .collect(Collectors.joining(", "));
            remarks.add("'" + Titles.of(inputs.book().accesses().get(id)) + "' is opened a second time"
                    + (others.isEmpty() ? "." : ": it must not be open together with " + others + "."));
        });
        whyNotWith();
    }

    private void whyNotWith() {
        var open = new HashSet<>(solution.openings());
        open.addAll(problem.open());
        inputs.book().accesses().values().stream().filter(access -> open.contains(access.getId())
                && access.getNotWithWhy() != null && inputs.book().ofThisMachine(access.getNotWith()).stream()
                        .anyMatch(open::contains))
                .forEach(access -> remarks.add("'" + Titles.of(access) + "': " + access.getNotWithWhy()));
    }

    /** What must come before the strip and was not said to be done, although the strip has begun. */
    private void late(List<PlanItem> items) {
        if (!problem.open().isEmpty()) {
            items.stream().filter(item -> item.part() == Part.BEFORE).forEach(item -> remarks.add("'" + item.title()
                    + "' belongs before the strip, which has begun: if the job record shows that it was done, tick it as"
                    + " done, on the command line --done " + item.id() + "."));
        }
    }

    private void contradictions(List<PlanItem> items) {
        items.forEach(item -> item.work().map(work -> MachineStates.contradiction(List.copyOf(work.getStates())))
                .filter(pair -> !pair.isEmpty()).ifPresent(pair -> remarks.add("'" + item.title() + "' asks for "
                        + pair.get(0).getLiteral() + " and " + pair.get(1).getLiteral() + " at once: correct it before work.")));
    }

    private void unwritten(List<PlanItem> items) {
        items.stream().filter(item -> item.proof().isEmpty() && item.work().map(work -> work.getSteps().isEmpty()).orElse(true))
                .map(PlanItem::title).distinct()
                .forEach(title -> remarks.add("No steps are written down for '" + title + "'."));
    }

    private void proofs(List<PlanItem> items) {
        if (items.stream().anyMatch(item -> item.proof().filter(it -> it.getDuration() == null
                && it.getDistance() != null).isPresent())) {
            remarks.add("A trial run without a time is taken at " + ItemMaker.KM_AN_HOUR + " km/h.");
        }
        if (items.stream().anyMatch(item -> item.proof().filter(it -> it.getDuration() == null
                && it.getKind() == VerificationKind.COLD_START).isPresent())) {
            remarks.add("A cold start is taken at " + ItemMaker.MINUTES_A_START + " min of somebody's time.");
        }
        remarks.add("Hand-back is worked out for Monday to Friday, eight hours from 8:00, work from the next working day"
                + " and only when the missing parts are there; what nobody attends to runs on through the night.");
    }
}
