// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.benchlore.model.MachineState;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Qualification;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.search.PlanException;
import org.benchlore.plan.search.PlanProblem;
import org.benchlore.plan.search.Reach;
import org.benchlore.plan.search.Sitting;
import org.benchlore.plan.search.Solution;
import org.benchlore.plan.search.Target;

/**
 * Puts what the search chose into the order of the job: what must come before the strip; strip and work, each as soon as
 * it is within reach, first what needs the engine or must come before the strip with no more open than it needs, next that
 * which changes the machine's state least; refit in reverse, with what fills, bleeds and teaches in before a refit that needs
 * the engine; then what is done once after closing. The machine's state is changed before the item that asks for it.
 */
final class PlanOrder {

    /** Filling, bleeding, adjusting and teaching in come before the machine is driven out; tests after it. */
    private static final int LAST_BEFORE_IT_RUNS = 2;

    private final PlanProblem problem;
    private final Solution solution;
    private final PlanInputs inputs;
    private final ItemMaker maker;
    private final Reach reach;
    private final ClosingOrder order;
    private final StillOpen stillOpen;
    private final MachineStates states = new MachineStates();
    private final List<PlanItem> items = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private final Set<String> everOpen = new HashSet<>();
    private final Set<String> done = new HashSet<>();
    private final TreeMap<String, PlanItem> due = new TreeMap<>();
    private Optional<PlanItem> relief = Optional.empty();

    PlanOrder(PlanProblem problem, Solution solution, PlanInputs inputs) {
        this.problem = problem;
        this.solution = solution;
        this.inputs = inputs;
        this.maker = new ItemMaker(inputs);
        this.reach = new Reach(problem);
        this.order = new ClosingOrder(inputs.book(), solution.closings());
        this.stillOpen = new StillOpen(problem, inputs);
    }

    List<PlanItem> items() throws PlanException {
        open.addAll(problem.open());
        everOpen.addAll(open);
        orderOpen();
        for (var id : solution.closings()) {
            due.put(id, maker.closing(id));
        }
        anywhere(Part.BEFORE);
        for (var sitting : solution.sittings()) {
            close(sitting.kept());
            sitting(sitting);
        }
        close(List.of());
        anywhere(Part.CLOSING);
        closings();
        return items;
    }

    /** What is open at the start, in the order in which it is opened in a plan; the machine is left as that leaves it. */
    private void orderOpen() {
        var opening = new ArrayList<String>();
        while (opening.size() < open.size()) {
            var next = open.stream().filter(id -> !opening.contains(id) && reach.canOpen(id, new HashSet<>(opening)))
                    .map(maker::strip).min(easiest()).orElseThrow();
            opening.add(next.id());
            next.work().ifPresent(work -> states.enter(List.copyOf(work.getStates())));
        }
        open.clear();
        open.addAll(opening);
    }

    private Comparator<PlanItem> easiest() {
        return Comparator.comparing((PlanItem item) -> !NextItem.runs(item)).thenComparing(PlanOrder::lifts).thenComparing(this::changes)
                .thenComparing(item -> item.part() == Part.STRIP).thenComparing(PlanItem::id);
    }

    /** Nothing is driven with what was lifted and propped. */
    private static boolean lifts(PlanItem item) {
        return item.part() == Part.STRIP && item.work().filter(work -> work.getQualifications().contains(Qualification.LIFTING)).isPresent();
    }

    private void add(PlanItem item) throws PlanException {
        var wanted = item.work().map(work -> List.copyOf(work.getStates())).orElse(List.of());
        if (item.part() == Part.REFIT && NextItem.runs(item)) {
            settle(LAST_BEFORE_IT_RUNS, item.id());
        } else if (states.changes(wanted).contains(MachineState.FILLED)) {
            settle(0, "");
        }
        relieveAgain(item, wanted);
        // The first item names all it asks for: nobody knows for sure how the machine was left.
        items.add(item.changed(items.isEmpty() ? wanted.stream().sorted().toList() : states.changes(wanted)));
        states.enter(wanted);
    }

    /** What has run stands under pressure once more: what relieved it before the strip is done again, as a line of its own. */
    private void relieveAgain(PlanItem item, List<MachineState> wanted) throws PlanException {
        if (item.part() == Part.BEFORE && wanted.contains(MachineState.PRESSURE_RELIEVED)) {
            relief = Optional.of(item);
        } else if (relief.isPresent() && states.changes(wanted).contains(MachineState.PRESSURE_RELIEVED)) {
            add(relief.get().again());
        }
    }

    /**
     * Nothing runs or is tested empty: what fills is done as soon as everything that asks for it is closed. Nothing is driven or
     * lifted with what has not been bled, adjusted and taught in again either, as far as that can be done by then.
     */
    private void settle(int last, String closed) throws PlanException {
        for (var next = settling(last, closed); next.isPresent(); next = settling(last, closed)) {
            due.remove(next.get().id());
            add(next.get());
        }
    }

    private Optional<PlanItem> settling(int last, String closed) throws PlanException {
        var ready = new ArrayList<PlanItem>();
        for (var item : due.values()) {
            boolean isFilling = item.work().filter(work -> !work.getStates().contains(MachineState.FILLED)).isPresent();
            if (order.rank(item.id()) <= last && (last > 0 || isFilling) && !order.mustWait(item.id(), due.keySet())
                    && problem.accesses().stream().noneMatch(access -> access.closing().contains(item.id())
                            && (open.contains(access.id()) || access.id().equals(closed)))
                    && inputs.isDoneClosed(item)) {
                ready.add(item);
            }
        }
        return ready.stream().min(closingOrder());
    }

    private Comparator<PlanItem> closingOrder() {
        return Comparator.comparing((PlanItem item) -> order.rank(item.id())).thenComparing(item -> order.depth(item.id()))
                .thenComparing(this::changes).thenComparing(PlanItem::id);
    }

    private int changes(PlanItem item) {
        return item.work().map(work -> states.changes(List.copyOf(work.getStates())).size()).orElse(0);
    }

    /** Looking and measuring come before the strip, teaching in and adjusting after closing. */
    private void anywhere(Part part) throws PlanException {
        var left = new TreeMap<>(solution.anywhere());
        left.keySet().removeAll(done);
        var now = new TreeMap<String, PlanItem>();
        for (var entry : left.entrySet()) {
            var kind = inputs.book().procedure(entry.getKey()).getKind();
            boolean isLate = !inputs.gates().contains(entry.getKey())
                    && (kind == ProcedureKind.TEACH_IN || kind == ProcedureKind.ADJUST) && !solution.sittings().isEmpty();
            if (part == Part.CLOSING || !isLate && !waits(entry.getKey())) {
                boolean isGate = inputs.gates().contains(entry.getKey());
                now.put(entry.getKey(), maker.work(isGate ? Part.BEFORE : Part.WORK, entry.getKey(), entry.getValue()));
            }
        }
        works(now, solution.anywhere().keySet());
    }

    /** Whether a target waits for one that is done in a sitting. */
    private boolean waits(String id) {
        var sat = new HashSet<String>();
        solution.sittings().forEach(sitting -> sat.addAll(sitting.done().keySet()));
        return target(id).before().stream().anyMatch(sat::contains);
    }

    private Target target(String id) {
        return problem.targets().stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
    }

    private void works(Map<String, PlanItem> left, Set<String> among) throws PlanException {
        while (!left.isEmpty()) {
            var ready = left.keySet().stream().filter(id -> target(id).before().stream().noneMatch(left::containsKey)).toList();
            var next = ready.stream().min(Comparator.comparing((String id) -> !NextItem.runs(left.get(id)))
                    .thenComparing(id -> !inputs.gates().contains(id)).thenComparing(id -> changes(left.get(id)))
                    .thenComparing(Comparator.naturalOrder())).orElseThrow();
            add(left.remove(next));
            done.add(next);
        }
    }

    private void close(List<String> kept) throws PlanException {
        for (int i = open.size() - 1; i >= 0; i--) {
            if (!kept.contains(open.get(i))) {
                whileOpen(open.get(i));
                var id = open.remove(i);
                add(maker.refit(id));
            }
        }
        // The order of opening stays as it was, if what stays open can be opened in it.
        if (!canBeOpened(open)) {
            open.clear();
            open.addAll(kept);
        }
    }

    /** What comes after closing and can only be done with this open is done now, if all that asks for it is closed. */
    private void whileOpen(String access) throws PlanException {
        var needing = due.values().stream().filter(item -> stillOpen.isFor(item, access, open)).sorted(closingOrder()).toList();
        if (!needing.isEmpty()) {
            settle(LAST_BEFORE_IT_RUNS, access);
        }
        for (var item : needing) {
            if (!order.mustWait(item.id(), due.keySet())) {
                due.remove(item.id());
                add(item);
            }
        }
    }

    private boolean canBeOpened(List<String> row) {
        for (int i = 0; i < row.size(); i++) {
            if (!reach.canOpen(row.get(i), new HashSet<>(row.subList(0, i)))) {
                return false;
            }
        }
        return true;
    }

    private void sitting(Sitting sitting) throws PlanException {
        var toOpen = new ArrayList<>(sitting.opened());
        var toDo = new TreeMap<>(sitting.done());
        while (!toOpen.isEmpty() || !toDo.isEmpty()) {
            var next = next(toOpen, toDo);
            add(next);
            if (next.part() == Part.STRIP) {
                toOpen.remove(next.id());
                open.add(next.id());
                everOpen.add(next.id());
            } else {
                toDo.remove(next.id());
                done.add(next.id());
            }
        }
    }

    private PlanItem next(List<String> toOpen, Map<String, String> toDo) throws PlanException {
        var strips = toOpen.stream().map(id -> everOpen.contains(id) ? maker.strip(id).again() : maker.strip(id)).toList();
        return new NextItem(problem, inputs, maker, new HashSet<>(open)).of(strips, toDo, easiest());
    }

    private void closings() throws PlanException {
        var left = due;
        while (!left.isEmpty()) {
            var ready = left.keySet().stream().filter(id -> !order.mustWait(id, left.keySet())).toList();
            var next = (ready.isEmpty() ? left.keySet() : ready).stream().map(left::get).min(closingOrder()).orElseThrow();
            left.remove(next.id());
            for (var item : reopened(next)) {
                add(item);
            }
        }
    }

    /** Something done after closing that needs an access all the same: it is opened again for it, and closed. */
    private List<PlanItem> reopened(PlanItem item) throws PlanException {
        var around = new ArrayList<PlanItem>();
        var again = inputs.reopening(item, problem);
        again.forEach(id -> around.add(everOpen.contains(id) ? maker.strip(id).again() : maker.strip(id)));
        around.add(item);
        for (int i = again.size() - 1; i >= 0; i--) {
            around.add(everOpen.contains(again.get(i)) ? maker.refit(again.get(i)).again() : maker.refit(again.get(i)));
        }
        return around;
    }
}
