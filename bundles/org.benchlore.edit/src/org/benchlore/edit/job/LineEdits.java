// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.FieldText;
import org.benchlore.edit.InnerEdits;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.DoneWork;
import org.benchlore.model.Measurement;
import org.benchlore.model.Round;
import org.benchlore.model.Verdict;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Makes the edits that fill a job card: each is one step of undo, and what was typed wrong is refused in a sentence. */
public final class LineEdits {

    private final EditSession session;
    private final Recorded recorded;
    private final Fields fields;

    /**
     * Makes it.
     *
     * @param session the session of a job record
     */
    public LineEdits(EditSession session) {
        this.session = session;
        this.recorded = new Recorded(session.library());
        this.fields = new Fields(session);
    }

    /**
     * Ticks a line, or changes what was written when it was ticked.
     *
     * @param round a round of the record
     * @param line what the line says
     * @param doing who, how long, what was put in
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if time or people cannot be read
     */
    public Edit tick(Round round, Ticked line, Doing doing) {
        var label = "tick a line of the card";
        var there = recorded.done(round, line);
        var edits = new ArrayList<Edit>();
        if (there.isPresent()) {
            edits.add(session.edits().text(there.get(), Literals.DONE_WORK__MINUTES, doing.minutes()));
            edits.add(session.edits().text(there.get(), Literals.DONE_WORK__PEOPLE, doing.people()));
            edits.add(fields.reference(there.get(), Literals.DONE_WORK__BY, doing.by()));
        } else {
            edits.add(session.edits().inner().add(round, Literals.ROUND__DONE, entry(line, doing), InnerEdits.END).edit());
        }
        if (line instanceof Ticked.Opened) {
            edits.add(session.edits().addReference(round, Literals.ROUND__OPENED, line.address()));
        }
        return Edits.all(there.isPresent() ? "change a line of the card" : label, edits);
    }

    private DoneWork entry(Ticked line, Doing doing) {
        var done = BookFactory.eINSTANCE.createDoneWork();
        fields.read(done, Literals.DONE_WORK__MINUTES, doing.minutes());
        fields.read(done, Literals.DONE_WORK__PEOPLE, doing.people());
        fields.point(done, subject(line), Optional.of(line.address()));
        fields.point(done, Literals.DONE_WORK__BY, doing.by());
        fields.pointAll(done, Literals.DONE_WORK__RENEWED, doing.renewed());
        fields.pointAll(done, Literals.DONE_WORK__FITTED, doing.fitted());
        return done;
    }

    private static EReference subject(Ticked line) {
        return line instanceof Ticked.Done ? Literals.DONE_WORK__PROCEDURE
                : line instanceof Ticked.Opened ? Literals.DONE_WORK__OPENED : Literals.DONE_WORK__CLOSED;
    }

    /**
     * Takes a tick back, with the time and the name that stood with it.
     *
     * @param round a round of the record
     * @param line what the line says
     * @return the edit, which does nothing if the line is not ticked
     */
    public Edit untick(Round round, Ticked line) {
        var edits = new ArrayList<Edit>();
        recorded.done(round, line).ifPresent(done -> edits.add(session.edits().inner().remove(done)));
        if (line instanceof Ticked.Opened) {
            var rest = round.getOpened().stream().flatMap(access -> session.library().addressOf(access).stream())
                    .filter(address -> !address.equals(line.address())).toList();
            if (rest.size() < round.getOpened().size()) {
                edits.add(session.edits().references(round, Literals.ROUND__OPENED, rest));
            }
        }
        return Edits.all("take a tick back", edits);
    }

    /**
     * Writes what was measured, with the verdict that follows from the limits.
     *
     * @param round a round of the record
     * @param at where the measurement stands
     * @param asked the measurement
     * @param typed the value as typed; empty takes it out again
     * @param by who measured
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if it is no value, or one of something else
     */
    public Edit measured(Round round, Address at, Measurement asked, String typed, Optional<Address> by) {
        var value = FieldText.read(Literals.MEASURED_VALUE__VALUE, typed).map(Quantity.class::cast);
        var there = recorded.measured(round, at);
        var label = "write a measured value";
        if (value.isEmpty()) {
            return there.map(entry -> session.edits().inner().remove(entry)).orElseGet(() -> Edits.all(label, List.of()));
        }
        var verdict = Judged.of(asked, value.get()).verdict();
        if (there.isPresent()) {
            return Edits.all(label, List.of(session.edits().value(there.get(), Literals.MEASURED_VALUE__VALUE, value.get()),
                    session.edits().value(there.get(), Literals.MEASURED_VALUE__VERDICT,
                            verdict == Verdict.NOT_RECORDED ? null : verdict),
                    fields.reference(there.get(), Literals.MEASURED_VALUE__BY, by)));
        }
        var entry = BookFactory.eINSTANCE.createMeasuredValue();
        entry.setValue(value.get());
        entry.setVerdict(verdict);
        fields.point(entry, Literals.MEASURED_VALUE__MEASUREMENT, Optional.of(at));
        fields.point(entry, Literals.MEASURED_VALUE__BY, by);
        return add(label, round, Literals.ROUND__MEASURED, entry);
    }

    /**
     * Writes how a fastening was tightened.
     *
     * @param round a round of the record
     * @param at where the fastening stands
     * @param turning torque, angle, wrench, who; without torque and angle the entry is taken out again
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if torque or angle cannot be read
     */
    public Edit tightened(Round round, Address at, Turning turning) {
        var there = recorded.tightened(round, at);
        var label = "write a torque";
        if (turning.torque().isBlank() && turning.angle().isBlank()) {
            return there.map(entry -> session.edits().inner().remove(entry)).orElseGet(() -> Edits.all(label, List.of()));
        }
        if (there.isPresent()) {
            return Edits.all(label, List.of(
                    session.edits().text(there.get(), Literals.TIGHTENED__TORQUE, turning.torque()),
                    session.edits().text(there.get(), Literals.TIGHTENED__ANGLE, turning.angle()),
                    fields.reference(there.get(), Literals.TIGHTENED__TOOL, turning.tool()),
                    fields.reference(there.get(), Literals.TIGHTENED__HOLDING, turning.holding()),
                    fields.reference(there.get(), Literals.TIGHTENED__BY, turning.by())));
        }
        var entry = BookFactory.eINSTANCE.createTightened();
        fields.read(entry, Literals.TIGHTENED__TORQUE, turning.torque());
        fields.read(entry, Literals.TIGHTENED__ANGLE, turning.angle());
        fields.point(entry, Literals.TIGHTENED__FASTENING, Optional.of(at));
        fields.point(entry, Literals.TIGHTENED__TOOL, turning.tool());
        fields.point(entry, Literals.TIGHTENED__HOLDING, turning.holding());
        fields.point(entry, Literals.TIGHTENED__BY, turning.by());
        return add(label, round, Literals.ROUND__TIGHTENED, entry);
    }

    private Edit add(String label, Round round, EReference place, EObject entry) {
        return Edits.all(label, List.of(session.edits().inner().add(round, place, entry, InnerEdits.END).edit()));
    }

    /**
     * Writes down a part that came off.
     *
     * @param round a round of the record
     * @param component where it was
     * @param part which part, if its number can be read
     * @param condition what it looked like
     * @return the edit
     */
    public Edit removed(Round round, Address component, Optional<Address> part, String condition) {
        var entry = BookFactory.eINSTANCE.createRemovedPart();
        fields.point(entry, Literals.REMOVED_PART__COMPONENT, Optional.of(component));
        fields.point(entry, Literals.REMOVED_PART__PART, part);
        fields.read(entry, Literals.REMOVED_PART__CONDITION, condition);
        return add("write down a removed part", round, Literals.ROUND__REMOVED, entry);
    }
}
