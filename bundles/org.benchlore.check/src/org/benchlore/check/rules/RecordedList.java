// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.Recorded;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/**
 * A list that matters for safety and what is said of it.
 *
 * @param owner the work or procedure
 * @param field where it is said
 * @param name what it lists
 * @param count how many there are; hazards count with those of the steps
 */
record RecordedList(EObject owner, EAttribute field, String name, int count) {

    static List<RecordedList> of(Work work) {
        return List.of(new RecordedList(work, Literals.WORK__CONDITIONS_RECORDED, "conditions", work.getConditions().size()),
                new RecordedList(work, Literals.WORK__HAZARDS_RECORDED, "hazards", (int) Works.hazards(work).count()),
                new RecordedList(work, Literals.WORK__PARTS_RECORDED, "parts", work.getParts().size()),
                new RecordedList(work, Literals.WORK__TOOLS_RECORDED, "tools", work.getTools().size()),
                new RecordedList(work, Literals.WORK__SUPPLIES_RECORDED, "supplies", work.getSupplies().size()));
    }

    static List<RecordedList> of(Procedure procedure) {
        var all = new ArrayList<RecordedList>();
        all.add(new RecordedList(procedure, Literals.PROCEDURE__CLOSING_RECORDED, "closing conditions",
                procedure.getClosingConditions().size()));
        return all;
    }

    Recorded said() {
        return (Recorded) owner.eGet(field);
    }
}
