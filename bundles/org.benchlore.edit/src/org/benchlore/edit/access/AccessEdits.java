// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Machine;
import org.benchlore.model.Need;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;

/** Removes what other elements lead to: needs that would be left with nothing go too. */
public final class AccessEdits {

    private AccessEdits() {
    }

    /**
     * Removes an access, and every need of the machine that only it fulfils.
     *
     * @param session the session of a machine
     * @param access one of its accesses
     * @return the edit
     */
    public static Edit remove(EditSession session, Access access) {
        var edits = new ArrayList<Edit>();
        var removing = session.edits().inner().remove(access);
        edits.add(removing);
        for (var other : ((Machine) session.element()).getAccesses()) {
            if (other != access) {
                other.getNeeds().stream().filter(need -> isOnly(need, access))
                        .forEach(need -> edits.add(session.edits().inner().remove(need)));
            }
        }
        return Edits.all(removing.label(), edits);
    }

    private static boolean isOnly(Need need, Access access) {
        return need.getAnyOf().size() == 1 && need.getAnyOf().get(0) == access;
    }

    /**
     * Finds what leads to an element, or to something in it, from other files.
     *
     * @param session the session of the element's file
     * @param element an element of it
     * @return the rows of those files
     */
    public static List<Row> leadingTo(EditSession session, EObject element) {
        var path = session.path();
        return session.library().catalogue().referringTo(path).filter(row -> row.references().stream()
                .anyMatch(at -> at.path().equals(path) && isWithin(session, at, element))).toList();
    }

    private static boolean isWithin(EditSession session, Address address, EObject element) {
        EObject at = session.element().eResource().getEObject(address.id());
        while (at != null && at != element) {
            at = at.eContainer();
        }
        return at == element;
    }
}
