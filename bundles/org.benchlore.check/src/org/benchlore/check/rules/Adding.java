// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Recorded;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Edits that put something into a list of the work around an element. */
final class Adding {

    private Adding() {
    }

    static Edit part(EditSession session, EObject element, Address part, int count) {
        var work = work(element);
        var adding = session.edits().inner().add(work, Literals.WORK__PARTS, Literals.PART_USE, InnerEdits.END);
        return all(session, work, Literals.WORK__PARTS_RECORDED, List.of(adding.edit(),
                session.edits().reference(adding.element(), Literals.PART_USE__PART, Optional.of(part)),
                session.edits().value(adding.element(), Literals.PART_USE__QUANTITY, count == 1 ? null : Integer.valueOf(count))));
    }

    static Edit tool(EditSession session, EObject element, Address tool) {
        return one(session, element, Literals.WORK__TOOLS, Literals.TOOL_USE, Literals.TOOL_USE__TOOL,
                Literals.WORK__TOOLS_RECORDED, tool);
    }

    static Edit supply(EditSession session, EObject element, Address supply) {
        return one(session, element, Literals.WORK__SUPPLIES, Literals.SUPPLY_USE, Literals.SUPPLY_USE__SUPPLY,
                Literals.WORK__SUPPLIES_RECORDED, supply);
    }

    private static Edit one(EditSession session, EObject element, EReference list, EClass type, EReference reference,
            EAttribute recorded, Address target) {
        var work = work(element);
        var adding = session.edits().inner().add(work, list, type, InnerEdits.END);
        return all(session, work, recorded, List.of(adding.edit(),
                session.edits().reference(adding.element(), reference, Optional.of(target))));
    }

    /** A list that said 'none' says 'listed' now. */
    private static Edit all(EditSession session, Work work, EAttribute recorded, List<Edit> edits) {
        if (work.eGet(recorded) != Recorded.NONE) {
            return Edits.all("add to the list", edits);
        }
        var more = new ArrayList<>(edits);
        more.add(session.edits().value(work, recorded, Recorded.LISTED));
        return Edits.all("add to the list", more);
    }

    private static Work work(EObject element) {
        for (var at = element; at != null; at = at.eContainer()) {
            if (at instanceof Work work) {
                return work;
            }
        }
        throw new IllegalArgumentException("There is no work around this: add it by hand");
    }
}
