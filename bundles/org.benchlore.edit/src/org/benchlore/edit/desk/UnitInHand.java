// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Unit;
import org.benchlore.store.KindFacts;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/** Tells which unit somebody works on: the one whose page or job record was read last and that fits the note. */
public final class UnitInHand {

    private UnitInHand() {
    }

    /**
     * Looks for the unit.
     *
     * @param library an open library
     * @param note a note
     * @param visited what was read, the latest first
     * @return the unit, or empty if none was read that is of the note's machine; a note without a machine fits all
     */
    public static Optional<Address> find(Library library, FieldNote note, List<Address> visited) {
        var machine = library.addressOf(note.getMachine()).or(() -> machine(library, library.addressOf(note.getUnit())));
        return visited.stream().map(address -> unit(library, address)).flatMap(Optional::stream)
                .filter(unit -> machine.isEmpty() || machine.equals(machine(library, Optional.of(unit)))).findFirst();
    }

    private static Optional<Address> unit(Library library, Address address) {
        var row = library.catalogue().entry(address.path()).flatMap(entry -> entry.row());
        return row.filter(top -> top.kind() == Kind.UNIT).map(Row::address)
                .or(() -> row.flatMap(Row::job).flatMap(KindFacts.JobFacts::unit));
    }

    private static Optional<Address> machine(Library library, Optional<Address> unit) {
        return unit.flatMap(library::element).filter(Unit.class::isInstance).map(one -> ((Unit) one).getMachine())
                .flatMap(library::addressOf);
    }
}
