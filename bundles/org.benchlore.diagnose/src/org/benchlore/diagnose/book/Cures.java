// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Status;
import org.benchlore.store.Row;

/** Finds what is done about a cause: procedures that renew, adjust, serve or teach in where it sits, the nearest first. */
public final class Cures {

    private static final Set<ProcedureKind> HERE = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL, ProcedureKind.ADJUST,
            ProcedureKind.SERVICE, ProcedureKind.TEACH_IN);
    private static final Set<ProcedureKind> AROUND = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);
    private static final int MOST = 3;

    private final MachineBook book;
    private final WorkReader works;

    /** A procedure and how many places away from the component it is. */
    private record Found(Named procedure, int distance) {
    }

    /**
     * Makes a finder.
     *
     * @param book the machine
     */
    public Cures(MachineBook book) {
        this.book = book;
        this.works = new WorkReader(book);
    }

    /**
     * Finds the cures of a candidate.
     *
     * @param candidate what may be the cause
     * @return at most three procedures that are not withdrawn
     */
    public List<Named> of(Candidate candidate) {
        var upwards = book.upwards(candidate.component());
        return book.library().catalogue().rows(Kind.PROCEDURE).filter(row -> row.machines().contains(book.address()))
                .flatMap(row -> found(row, upwards).stream())
                .sorted(Comparator.comparingInt(Found::distance).thenComparing(one -> one.procedure().title()))
                .limit(MOST).map(Found::procedure).toList();
    }

    private Optional<Found> found(Row row, List<Address> upwards) {
        return book.library().top(row.id()).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                .filter(procedure -> procedure.getStatus() != Status.WITHDRAWN)
                .flatMap(procedure -> distance(procedure, upwards).map(distance ->
                        new Found(new Named(row.address(), row.title()), distance)));
    }

    /** Its own component, then what renews it along with others, then what renews something that it is part of. */
    private Optional<Integer> distance(Procedure procedure, List<Address> upwards) {
        int at = book.library().addressOf(procedure.getComponent()).map(upwards::indexOf).orElse(-1);
        if (at == 0 && HERE.contains(procedure.getKind())) {
            return Optional.of(0);
        }
        if (!AROUND.contains(procedure.getKind())) {
            return Optional.empty();
        }
        return works.renewed(procedure).contains(upwards.get(0)) ? Optional.of(1)
                : at > 0 ? Optional.of(1 + at) : Optional.empty();
    }
}
