// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.plan.PlanRequest;
import org.benchlore.store.Catalogue;

/**
 * What somebody picked in the view.
 *
 * @param subject id of a unit or machine, empty words if none is picked
 * @param work ids of procedures, in the order in which they were picked
 * @param open ids of accesses that are open already
 * @param done ids of procedures that are done
 */
public record Wanted(String subject, List<String> work, List<String> open, List<String> done) {

    /** Nothing is picked. */
    public static final Wanted NOTHING = new Wanted("", List.of(), List.of(), List.of());
    private static final Set<Kind> SUBJECTS = Set.of(Kind.UNIT, Kind.MACHINE);

    /** Whether something can be planned for an element of this kind. */
    public static boolean isSubject(Kind kind) {
        return SUBJECTS.contains(kind);
    }

    /** Another unit or machine stands closed, as far as anybody has said. */
    public Wanted on(String other) {
        return other.equals(subject) ? this : new Wanted(other, work, List.of(), List.of());
    }

    /** With one more procedure. */
    public Wanted adding(String procedure) {
        return new Wanted(subject, with(work, procedure), open, without(done, procedure));
    }

    Wanted removing(String procedure) {
        return new Wanted(subject, without(work, procedure), open, without(done, procedure));
    }

    Wanted opened(String access, boolean isOpen) {
        return new Wanted(subject, work, isOpen ? with(open, access) : without(open, access), done);
    }

    Wanted done(String procedure, boolean isDone) {
        return new Wanted(subject, work, open, isDone ? with(done, procedure) : without(done, procedure));
    }

    /** What is left of it in a library that may not know all. */
    public Wanted knownTo(Catalogue catalogue) {
        boolean known = is(catalogue, subject, SUBJECTS);
        return new Wanted(known ? subject : "", procedures(catalogue, work), known ? open : List.of(),
                procedures(catalogue, done));
    }

    private static List<String> procedures(Catalogue catalogue, List<String> ids) {
        return ids.stream().filter(id -> is(catalogue, id, Set.of(Kind.PROCEDURE))).toList();
    }

    private static boolean is(Catalogue catalogue, String id, Set<Kind> kinds) {
        return catalogue.byId(id).filter(row -> kinds.contains(row.kind())).isPresent();
    }

    /** Whether there is anything to plan: work, or a machine that does not stay open. */
    public boolean isEnough() {
        return !subject.isEmpty() && !(work.isEmpty() && open.isEmpty());
    }

    /** The plan that is asked for. */
    public PlanRequest request(LocalDate today) {
        return new PlanRequest(subject, work.stream().filter(id -> !done.contains(id)).toList(), open, done, today,
                Optional.empty());
    }

    private static List<String> with(List<String> ids, String id) {
        if (ids.contains(id)) {
            return ids;
        }
        var more = new ArrayList<>(ids);
        more.add(id);
        return List.copyOf(more);
    }

    private static List<String> without(List<String> ids, String id) {
        return ids.stream().filter(one -> !one.equals(id)).toList();
    }
}
