// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;

/** Finds, for a list that matters for safety, the field that says whether it was written down. */
public final class RecordedLists {

    private static final String ENDING = "Recorded";

    private RecordedLists() {
    }

    /**
     * Returns the field beside a list.
     *
     * @param list a containment list
     * @return the field that says whether it was recorded, or empty if it has none
     */
    public static Optional<EAttribute> fieldOf(EReference list) {
        return list.getEContainingClass().getEAttributes().stream().filter(RecordedLists::isRecorded)
                .filter(field -> listOf(field).filter(list::equals).isPresent()).findFirst();
    }

    /**
     * Returns the list that a field speaks of.
     *
     * @param field a field whose name ends in {@code Recorded}
     * @return the list, or empty if it is no such field
     */
    public static Optional<EReference> listOf(EAttribute field) {
        if (!isRecorded(field)) {
            return Optional.empty();
        }
        var name = field.getName().substring(0, field.getName().length() - ENDING.length());
        EClass type = field.getEContainingClass();
        return type.getEAllContainments().stream()
                .filter(list -> list.getName().equals(name) || list.getName().equals(name + "Conditions")).findFirst();
    }

    private static boolean isRecorded(EAttribute field) {
        return field.getEAttributeType() == Literals.RECORDED && field.getName().endsWith(ENDING);
    }
}
