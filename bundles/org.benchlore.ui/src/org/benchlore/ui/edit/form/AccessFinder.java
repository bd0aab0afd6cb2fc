// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.access.SplitHours;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Element;
import org.benchlore.model.Machine;
import org.eclipse.osgi.util.NLS;

/** Finds accesses of a machine that is being edited; one of which only the name is known yet is made at once. */
final class AccessFinder implements Finder {

    private static final int SHORTEST_NAME = 4;

    private final Finder known;
    private final EditSession session;
    private final Machine machine;

    AccessFinder(Finder known, EditSession session, Machine machine) {
        this.known = known;
        this.session = session;
        this.machine = machine;
    }

    @Override
    public List<Choice> find(String typed) {
        return known.find(typed);
    }

    @Override
    public Optional<String> offer(String typed) {
        return typed.strip().length() < SHORTEST_NAME || SplitHours.find(machine, typed).isPresent()
                ? Optional.empty() : Optional.of(NLS.bind(Messages.makeNew, Messages.access, typed.strip()));
    }

    @Override
    public Optional<Choice> make(String typed) {
        var access = BookFactory.eINSTANCE.createAccess();
        access.setTitle(typed.strip());
        access.setStrip(BookFactory.eINSTANCE.createWork());
        access.setRefit(BookFactory.eINSTANCE.createWork());
        var adding = session.edits().inner().add(machine, Literals.MACHINE__ACCESSES, access, InnerEdits.END);
        session.execute(adding.edit());
        var address = new Address(session.path(), ((Element) adding.element()).getId());
        return Optional.of(new Choice(address, typed.strip(), "", List.of()));
    }
}
