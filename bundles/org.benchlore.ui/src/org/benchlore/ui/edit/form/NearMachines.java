// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Applicability;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EClass;

/** Whose accesses and components are likeliest meant: those of the machines that an element is for. */
final class NearMachines {

    private static final Set<EClass> OF_ONE_MACHINE = Set.of(Literals.ACCESS, Literals.COMPONENT, Literals.FUNCTION,
            Literals.CAUSE);

    private NearMachines() {
    }

    /** Paths of the machines that an element says it is for. */
    static Set<String> of(TopElement element, Library library) {
        Stream<Machine> machines = element instanceof Procedure procedure
                ? procedure.getApplicability().stream().map(Applicability::getMachine)
                : element instanceof FieldNote note ? Stream.ofNullable(note.getMachine()) : Stream.empty();
        return machines.flatMap(machine -> library.addressOf(machine).stream()).map(Address::path)
                .collect(Collectors.toSet());
    }

    /** A machine names what is in it, never what is in another one. */
    static boolean isWithin(TopElement element, EClass type) {
        return element instanceof Machine && OF_ONE_MACHINE.contains(type);
    }
}
