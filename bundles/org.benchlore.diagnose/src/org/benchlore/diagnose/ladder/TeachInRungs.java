// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.diagnose.book.WorkDone;
import org.benchlore.diagnose.ladder.Item.State;
import org.benchlore.model.Address;
import org.benchlore.model.Condition;
import org.benchlore.model.DoneWork;
import org.benchlore.model.MeasuredValue;
import org.benchlore.model.Measurement;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;
import org.benchlore.model.Verdict;
import org.benchlore.model.Work;

/** The rungs that stand on the teach-in and on the steps of the work. */
final class TeachInRungs {

    private final CaseInHand now;
    private final WorkDone work;

    TeachInRungs(CaseInHand now, WorkDone work) {
        this.now = now;
        this.work = work;
    }

    private Stream<Procedure> procedures(ProcedureKind kind) {
        return work.with().stream().sorted().flatMap(address -> now.book().library().element(address).stream())
                .filter(Procedure.class::isInstance).map(Procedure.class::cast).filter(one -> one.getKind() == kind);
    }

    private Optional<Address> address(org.eclipse.emf.ecore.EObject object) {
        return now.book().library().addressOf(object);
    }

    /** Whether it was taught in at all; what is measured before it is decided how that ended; the conditions in words. */
    List<Item> conditions() {
        var items = new ArrayList<Item>();
        forgotten().forEach(items::add);
        procedures(ProcedureKind.TEACH_IN).forEach(teachIn -> teachIn.getWays().stream().findFirst()
                .map(way -> way.getWork()).ifPresent(one -> {
                    before(one).forEach(step -> step.getMeasurements().forEach(asked -> items.add(measured(asked))));
                    one.getConditions().forEach(condition -> items.add(condition(condition)));
                }));
        return List.copyOf(items);
    }

    /** Teach-ins of which the job's record says nothing at all; a round that names a failed one speaks for all. */
    private Stream<Item> forgotten() {
        if (work.job().isEmpty() || work.job().get().getRounds().stream().anyMatch(it -> it.getKind() == RoundKind.TEACH_IN_FAILED)) {
            return Stream.empty();
        }
        return procedures(ProcedureKind.TEACH_IN).filter(teachIn -> work.rounds().stream().flatMap(round -> round.getDone().stream())
                .noneMatch(done -> address(done.getProcedure()).equals(address(teachIn)))).map(teachIn -> new Item(State.OPEN,
                        title(teachIn), "not recorded as done: do it to its end before anything else is suspected",
                        address(teachIn)));
    }

    private static String title(Procedure procedure) {
        return procedure.getTitle() == null ? procedure.getId() : procedure.getTitle();
    }

    private static List<Step> before(Work work) {
        return work.getSteps().stream().takeWhile(step -> step.getKind() != StepKind.DECIDE).toList();
    }

    private Item measured(Measurement asked) {
        var place = address(asked);
        var value = work.rounds().stream().flatMap(round -> round.getMeasured().stream())
                .filter(one -> place.isPresent() && address(one.getMeasurement()).equals(place))
                .reduce((earlier, later) -> later);
        var limits = Stream.of(asked.getLow(), asked.getHigh()).filter(java.util.Objects::nonNull).map(Object::toString)
                .reduce((low, high) -> low + " to " + high).orElse("no limits recorded");
        return new Item(value.map(TeachInRungs::state).orElse(State.OPEN), asked.getWhat() == null ? asked.getId()
                : asked.getWhat(), value.map(one -> "measured " + one.getValue() + ", ").orElse("not recorded, ")
                        + "should be " + limits, place);
    }

    private static State state(MeasuredValue value) {
        return value.getVerdict() == Verdict.PASS ? State.GOOD : value.getVerdict() == Verdict.FAIL ? State.BAD : State.OPEN;
    }

    private Item condition(Condition condition) {
        return new Item(State.OPEN, text(condition.getText()), text(condition.getWhy()), address(condition));
    }

    private static String text(String text) {
        return text == null ? "" : text.strip();
    }

    /** The steps by sort; what is bled or filled afterwards stands with the air. */
    List<Item> disturbed() {
        var items = new ArrayList<Item>();
        work.steps().stream().filter(step -> step.sort() == WorkDone.Sort.CONNECTOR).forEach(step -> items.add(item(step)));
        procedures(ProcedureKind.SERVICE).forEach(service -> items.add(service(service)));
        work.steps().stream().filter(step -> step.sort() != WorkDone.Sort.CONNECTOR)
                .sorted(Comparator.comparing(WorkDone.Disturbance::sort)).forEach(step -> items.add(item(step)));
        return items.stream().distinct().toList();
    }

    private static Item item(WorkDone.Disturbance step) {
        return new Item(State.OPEN, step.text(), step.sort().word(), Optional.of(step.address()));
    }

    private Item service(Procedure service) {
        var place = address(service);
        var done = work.rounds().stream().flatMap(round -> round.getDone().stream())
                .filter(one -> address(one.getProcedure()).equals(place)).toList();
        return new Item(done.isEmpty() ? State.OPEN : State.GOOD, title(service), done.isEmpty() ? "not recorded"
                : "done" + minutes(done.get(done.size() - 1)), place);
    }

    private static String minutes(DoneWork done) {
        return done.getMinutes() == null ? "" : ", " + done.getMinutes();
    }

    /** What learns, and what was already found innocent. */
    List<Item> software() {
        var items = new ArrayList<Item>();
        procedures(ProcedureKind.TEACH_IN).map(Procedure::getComponent).flatMap(component -> now.book().named(component).stream())
                .distinct().forEach(unit -> {
                    items.add(new Item(State.OPEN, unit.title() + ": software and learned values",
                            "last of all: read its software state and what it has learned", Optional.of(unit.address())));
                    now.file().notes().stream().filter(note -> note.status() == NoteStatus.RULED_OUT
                            && note.component().filter(unit.address()::equals).isPresent())
                            .forEach(note -> items.add(new Item(State.OPEN, unit.title() + " looked like this, was not",
                                    note.title() + (note.finding().isEmpty() ? "" : ": " + note.finding()),
                                    Optional.of(note.address()))));
                });
        return List.copyOf(items);
    }
}
