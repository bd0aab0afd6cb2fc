// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Sessions;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.store.ElementTitle;

/** Finds where hours can be split: the machines of a procedure, or the procedures of a machine that have such hours. */
public final class SplitPlaces {

    private final Sessions sessions;

    /**
     * Makes it for a library.
     *
     * @param sessions the edit sessions of the library; what is being edited counts as it stands in the editor
     */
    public SplitPlaces(Sessions sessions) {
        this.sessions = sessions;
    }

    /**
     * A machine and a procedure between which hours can be split.
     *
     * @param machine path of the machine's file
     * @param procedure path of the procedure's file
     * @param title what people call the one that is chosen
     */
    public record Place(String machine, String procedure, String title) {
    }

    /**
     * Finds the places for an element.
     *
     * @param element a machine or a procedure
     * @return the places by title; empty if there are none or it is neither
     */
    public List<Place> of(TopElement element) {
        return element instanceof Procedure procedure ? machines(procedure)
                : element instanceof Machine machine ? procedures(machine) : List.of();
    }

    private List<Place> machines(Procedure procedure) {
        var path = Kind.PROCEDURE.path(procedure.getId());
        return procedure.getApplicability().stream().map(one -> sessions.library().addressOf(one.getMachine()))
                .flatMap(Optional::stream).map(address -> address.path()).distinct()
                .flatMap(machine -> sessions.current(machine).stream().map(found ->
                        new Place(machine, path, ElementTitle.of(found)))).toList();
    }

    private List<Place> procedures(Machine machine) {
        var path = Kind.MACHINE.path(machine.getId());
        return sessions.library().catalogue().rows(Kind.PROCEDURE)
                .filter(row -> row.machines().stream().anyMatch(at -> at.path().equals(path)))
                .filter(row -> sessions.current(row.path()).filter(Procedure.class::isInstance).map(Procedure.class::cast)
                        .flatMap(SplitHours::problem).isEmpty())
                .map(row -> new Place(path, row.path(), row.title()))
                .sorted(Comparator.comparing(Place::title, String.CASE_INSENSITIVE_ORDER)).toList();
    }
}
