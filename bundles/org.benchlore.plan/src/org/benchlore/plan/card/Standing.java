// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Unit;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * Where a machine stands by what its job record says.
 *
 * @param open ids of the accesses that are open, in the order in which they were opened
 * @param done ids of the procedures that are done; what follows every closing is not among them, since it follows the
 *     next closing as well
 */
public record Standing(List<String> open, List<String> done) {

    public Standing {
        open = List.copyOf(open);
        done = List.copyOf(done);
    }

    /**
     * Where it stands now. A job that is closed leaves nothing open.
     *
     * @param library the library that the record refers to
     * @param job the record, perhaps a working copy
     * @return accesses and procedures
     */
    public static Standing now(Library library, JobRecord job) {
        var now = before(library, job, job.getRounds().size());
        return job.getState() == JobState.CLOSED ? new Standing(List.of(), now.done()) : now;
    }

    /**
     * Where it stood before a round.
     *
     * @param library the library that the record refers to
     * @param job the record, perhaps a working copy
     * @param round how many rounds came before
     * @return accesses and procedures
     */
    public static Standing before(Library library, JobRecord job, int round) {
        var open = new ArrayList<String>();
        var done = new LinkedHashSet<String>();
        for (var one : job.getRounds().subList(0, round)) {
            follow(library, one, open);
            one.getDone().forEach(work -> id(library, work.getProcedure()).ifPresent(done::add));
        }
        done.removeAll(closings(library, job));
        return new Standing(open, List.copyOf(done));
    }

    /** Lines of the card say in which order things were opened and closed; a round may name what was opened alone. */
    private static void follow(Library library, Round round, List<String> open) {
        var ticked = round.getDone().stream().flatMap(work -> id(library, work.getOpened()).stream()).toList();
        round.getOpened().forEach(access -> id(library, access).filter(id -> !ticked.contains(id) && !open.contains(id))
                .ifPresent(open::add));
        round.getDone().forEach(work -> {
            id(library, work.getOpened()).filter(id -> !open.contains(id)).ifPresent(open::add);
            id(library, work.getClosed()).ifPresent(open::remove);
        });
        if (round.getKind() == RoundKind.HAND_BACK) {
            open.clear();
        }
    }

    private static Set<String> closings(Library library, JobRecord job) {
        var all = new LinkedHashSet<String>();
        machine(library, job).ifPresent(machine -> machine.getAccesses().forEach(access -> add(library, access.getAfterClosing(), all)));
        job.getRounds().forEach(round -> {
            round.getPlanned().forEach(planned -> closings(library, planned, all));
            round.getDone().forEach(done -> closings(library, done.getProcedure(), all));
        });
        return all;
    }

    private static void closings(Library library, EObject procedure, Set<String> all) {
        library.resolve(procedure).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .ifPresent(it -> add(library, it.getAfterClosing(), all));
    }

    private static void add(Library library, List<? extends EObject> references, Set<String> all) {
        references.forEach(reference -> id(library, reference).ifPresent(all::add));
    }

    /**
     * Finds the machine that a job is done on.
     *
     * @param library the library that the record refers to
     * @param job the record
     * @return its machine, or empty if the unit or its machine is not written down or not there
     */
    public static Optional<Machine> machine(Library library, JobRecord job) {
        return Optional.ofNullable(job.getUnit()).flatMap(library::resolve).filter(Unit.class::isInstance)
                .map(Unit.class::cast).map(Unit::getMachine).flatMap(library::resolve).filter(Machine.class::isInstance)
                .map(Machine.class::cast);
    }

    private static Optional<String> id(Library library, EObject reference) {
        return library.addressOf(reference).map(Address::id);
    }
}
