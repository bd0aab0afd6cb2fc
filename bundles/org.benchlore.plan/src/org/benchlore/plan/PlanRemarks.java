// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.FluidWay;
import org.benchlore.model.MachineState;
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
        remarks.addAll(new NotedTogether(inputs.book()).remarks(items.stream().filter(PlanRemarks::isWholeJob).toList(),
                items.stream().filter(item -> item.proof().isEmpty()).map(PlanItem::id).collect(Collectors.toSet())));
        again(items);
        afterRunning(items);
        late(items);
        contradictions(items);
        filled(items);
        unwritten(items);
        proofs(items);
        return List.copyOf(remarks);
    }

    static boolean isWholeJob(PlanItem item) {
        return item.owner() instanceof Procedure procedure && item.proof().isEmpty()
                && WorkFacts.isByWholeJob(item.work().orElse(null), procedure);
    }

    private void wholeJobs(List<PlanItem> items) {
        for (var item : items) {
            if (isWholeJob(item)) {
                remarks.add("'" + item.title() + "' is planned from the hours of the whole job, strip and refit in them: "
                        + (problem.accesses().isEmpty() ? "no accesses are written down for this machine."
                                : "its own time is not written down.") + " What shares a strip is not seen.");
            }
        }
    }

    private void again(List<PlanItem> items) {
        items.stream().filter(item -> item.part() == Part.STRIP && item.isAgain()).map(PlanItem::id).distinct()
                .forEach(id -> remarks.add(title(id) + " is opened a second time" + notWith(id)));
        items.stream().filter(item -> item.part() == Part.BEFORE && item.isAgain()).map(PlanItem::title).distinct()
                .forEach(title -> remarks.add("'" + title + "' is done again, because the machine has run since."));
        whyNotWith();
    }

    private String notWith(String id) {
        var others = problem.accesses().stream().filter(access -> access.id().equals(id) || access.notWith().contains(id))
                .flatMap(access -> access.id().equals(id) ? access.notWith().stream() : Stream.of(access.id()))
                .filter(other -> !other.equals(id) && solution.openings().contains(other)).distinct().map(this::title)
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "." : ": it must not be open together with " + others + ".";
    }

    private String title(String access) {
        return "'" + Titles.of(inputs.book().accesses().get(access)) + "'";
    }

    /** What ran is hot and stands under pressure; what comes after it may ask for the opposite. */
    private void afterRunning(List<PlanItem> items) {
        var ran = Optional.<PlanItem>empty();
        for (var item : items) {
            if (ran.isPresent() && item.change().contains(MachineState.COLD)) {
                remarks.add("'" + item.title() + "' asks for a cold machine after '" + ran.get().title() + "' has run it: the time to"
                        + " cool down is not counted.");
            }
            if (ran.isPresent() && item.part() != Part.BEFORE && item.change().contains(MachineState.PRESSURE_RELIEVED)) {
                remarks.add("'" + item.title() + "' asks for the pressure relieved, and '" + ran.get().title() + "' has run the machine:"
                        + " relieve it, or see that it is, before anything is loosened.");
            }
            ran = NextItem.runs(item) ? Optional.of(item) : ran;
        }
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
                        + word(pair.get(0)) + " and " + word(pair.get(1)) + " at once: correct it before work.")));
    }

    private static String word(MachineState state) {
        return state.getLiteral().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What is filled after something was drained was asked for by itself, and nothing is drained. */
    private void filled(List<PlanItem> items) {
        var out = items.stream().flatMap(item -> supplies(item, FluidWay.OUT)).collect(Collectors.toSet());
        items.stream().filter(item -> inputs.request().procedures().contains(item.id()) && comesAfterClosing(item.id()))
                .filter(item -> supplies(item, FluidWay.IN).anyMatch(id -> !out.contains(id)))
                .forEach(item -> remarks.add("'" + item.title() + "' fills what this plan does not let out: only the level is"
                        + " looked at, or it is left out."));
    }

    private Stream<String> supplies(PlanItem item, FluidWay way) {
        return item.work().stream().flatMap(work -> work.getSupplies().stream()).filter(use -> use.getWay() == way)
                .flatMap(use -> inputs.book().ids(List.of(use.getSupply())).stream());
    }

    private boolean comesAfterClosing(String id) {
        return inputs.book().accesses().values().stream()
                .anyMatch(access -> inputs.book().ids(access.getAfterClosing()).contains(id));
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
