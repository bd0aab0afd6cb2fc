// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.References;
import org.benchlore.edit.SharedEdit;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Machine;
import org.benchlore.model.Need;
import org.benchlore.model.Procedure;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;

/**
 * Makes of the hours of a whole job an access of the machine with its strip and refit, and lets the first way of the
 * procedure need it, with what the work itself takes. Both files are changed by one edit, which is undone as one. Nothing is
 * saved yet. Times that an access has already stay as they are; hours of the whole job go once they are split.
 */
public final class SplitHours {

    private static final String LABEL = "split the hours";

    private final EditSession machine;
    private final EditSession procedure;

    /**
     * Makes it for a machine and one of its procedures.
     *
     * @param machine the session of a machine
     * @param procedure the session of a procedure
     * @throws IllegalArgumentException if the sessions are of something else, or there are no hours to split
     */
    public SplitHours(EditSession machine, EditSession procedure) {
        if (!(machine.element() instanceof Machine) || !(procedure.element() instanceof Procedure job)) {
            throw new IllegalArgumentException("Hours are split between a machine and a procedure that are being edited");
        }
        problem(job).ifPresent(reason -> {
            throw new IllegalArgumentException(reason);
        });
        this.machine = machine;
        this.procedure = procedure;
    }

    /**
     * Says why the hours of a procedure cannot be split.
     *
     * @param procedure a procedure
     * @return a plain sentence, or empty if they can
     */
    public static Optional<String> problem(Procedure procedure) {
        if (procedure.getWays().stream().anyMatch(way -> !way.getNeeds().isEmpty())) {
            return Optional.of("This procedure names its accesses already: change its hours there");
        }
        return procedure.getWholeJobUsual() == null
                ? Optional.of("No time for the whole job is written down: write it first, then split it")
                : Optional.empty();
    }

    /**
     * Finds an access by what people call it.
     *
     * @param machine a machine
     * @param name a title or an id, in capital letters or not
     * @return the access, or empty if a new one is meant
     */
    public static Optional<Access> find(Machine machine, String name) {
        var wanted = name.strip();
        return machine.getAccesses().stream().filter(access -> AccessRules.title(access).equalsIgnoreCase(wanted)
                || wanted.equals(access.getId())).findFirst();
    }

    /**
     * Completes hours by what is known already: times that the access has, and what is left for the work.
     *
     * @param access an access of the machine, or empty for a new one
     * @param given hours as they were given
     * @param whole time of the whole job, if known
     * @param isBad whether these are the hours when it goes badly
     * @return the hours as they will hold
     */
    public static Hours complete(Optional<Access> access, Hours given, Optional<Quantity> whole, boolean isBad) {
        var strip = access.map(Access::getStrip).map(work -> time(work, isBad)).or(given::strip);
        var refit = access.map(Access::getRefit).map(work -> time(work, isBad)).or(given::refit);
        var known = new Hours(strip, given.work(), refit);
        return new Hours(strip, given.work().or(() -> whole.flatMap(known::left)), refit);
    }

    private static Quantity time(Work work, boolean isBad) {
        return isBad ? work.getMinutesBad() : work.getMinutesUsual();
    }

    private Machine machine() {
        return (Machine) machine.element();
    }

    private Procedure procedure() {
        return (Procedure) procedure.element();
    }

    /**
     * Does it.
     *
     * @param name an access of the machine by its title, or the title of a new one
     * @param usual the hours when nothing is seized; work that is not given is what is left
     * @param bad the hours when it goes badly, as far as they are known
     * @return where the access stands
     * @throws IllegalArgumentException with a plain sentence if something is missing
     */
    public Address execute(String name, Hours usual, Hours bad) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("Say first what must come off, such as 'cover off'");
        }
        var known = find(machine(), name);
        var hours = complete(known, usual, Optional.of(procedure().getWholeJobUsual()), false);
        var worse = complete(known, bad, Optional.ofNullable(procedure().getWholeJobBad()), true);
        if (!hours.isWhole()) {
            throw new IllegalArgumentException(missing(hours));
        }
        var opening = known.map(access -> new InnerEdits.Adding(timed(access, hours, worse), access))
                .orElseGet(() -> machine.edits().inner().add(machine(), Literals.MACHINE__ACCESSES,
                        access(name.strip(), hours, worse), InnerEdits.END));
        var address = new Address(machine.path(), ((Access) opening.element()).getId());
        var edits = new LinkedHashMap<EditSession, Edit>();
        edits.put(machine, opening.edit());
        edits.put(procedure, split(address, hours, worse));
        SharedEdit.execute(LABEL, edits);
        return address;
    }

    private static String missing(Hours hours) {
        return "How long " + (hours.strip().isEmpty() ? "the strip" : hours.refit().isEmpty() ? "the refit"
                : "the work itself") + " takes is not said yet: write a time such as 35 min or 1.5 h";
    }

    private static Access access(String title, Hours usual, Hours bad) {
        var access = BookFactory.eINSTANCE.createAccess();
        access.setTitle(title);
        access.setStrip(work(usual.strip(), bad.strip()));
        access.setRefit(work(usual.refit(), bad.refit()));
        return access;
    }

    private static Work work(Optional<Quantity> usual, Optional<Quantity> bad) {
        var work = BookFactory.eINSTANCE.createWork();
        usual.ifPresent(work::setMinutesUsual);
        bad.ifPresent(work::setMinutesBad);
        return work;
    }

    /** Only what an access lacks is filled in: other procedures reckon with the rest. */
    private Edit timed(Access access, Hours usual, Hours bad) {
        var edits = new ArrayList<Edit>();
        edits.addAll(timed(access, Literals.ACCESS__STRIP, usual.strip(), bad.strip()));
        edits.addAll(timed(access, Literals.ACCESS__REFIT, usual.refit(), bad.refit()));
        return Edits.all(LABEL, edits);
    }

    private List<Edit> timed(Access access, EReference place, Optional<Quantity> usual, Optional<Quantity> bad) {
        return access.eGet(place) instanceof Work work ? times(machine, work, usual, bad)
                : List.of(machine.edits().inner().add(access, place, work(usual, bad), InnerEdits.END).edit());
    }

    private static List<Edit> times(EditSession session, Work work, Optional<Quantity> usual, Optional<Quantity> bad) {
        var edits = new ArrayList<Edit>();
        usual.ifPresent(time -> edits.add(session.edits().value(work, Literals.WORK__MINUTES_USUAL, time)));
        bad.ifPresent(time -> edits.add(session.edits().value(work, Literals.WORK__MINUTES_BAD, time)));
        return edits;
    }

    private Edit split(Address access, Hours usual, Hours bad) {
        var need = BookFactory.eINSTANCE.createNeed();
        need.getAnyOf().add((Access) References.to(Literals.ACCESS, access));
        var edits = new ArrayList<>(needing(need, usual.work(), bad.work()));
        edits.add(cleared(Literals.PROCEDURE__WHOLE_JOB_USUAL));
        if (bad.isWhole()) {
            edits.add(cleared(Literals.PROCEDURE__WHOLE_JOB_BAD));
        }
        return Edits.all(LABEL, edits);
    }

    /** The first way needs it, which is made if there is none. */
    private List<Edit> needing(Need need, Optional<Quantity> usual, Optional<Quantity> bad) {
        var inner = procedure.edits().inner();
        var fresh = work(usual, bad);
        if (procedure().getWays().isEmpty()) {
            return List.of(inner.add(procedure(), Literals.PROCEDURE__WAYS, way(need, fresh), InnerEdits.END).edit());
        }
        var way = procedure().getWays().get(0);
        var edits = new ArrayList<Edit>();
        edits.add(inner.add(way, Literals.WAY__NEEDS, need, InnerEdits.END).edit());
        if (way.getWork() == null) {
            edits.add(inner.add(way, Literals.WAY__WORK, fresh, InnerEdits.END).edit());
        } else {
            edits.addAll(times(procedure, way.getWork(), usual, bad));
        }
        return edits;
    }

    private Edit cleared(EAttribute field) {
        return procedure.edits().value(procedure(), field, null);
    }

    private static Way way(Need need, Work work) {
        var way = BookFactory.eINSTANCE.createWay();
        way.getNeeds().add(need);
        way.setWork(work);
        return way;
    }
}
