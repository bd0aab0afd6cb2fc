// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** Says which fields may not stay empty. */
public final class Required {

    private Required() {
    }

    static Optional<String> problem(EObject owner, EStructuralFeature feature) {
        if (!Layouts.isRequired(owner, feature)
                || owner.eGet(feature) instanceof String text && !text.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(feature == Literals.FIELD_NOTE__TEXT ? Messages.textMissing
                : NLS.bind(Messages.fieldMissing, new FieldWords().label(feature)));
    }

    /**
     * Finds the fields of an element that may not stay empty and are.
     *
     * @param element a top-level element
     * @return a plain sentence for each
     */
    public static Map<Unread.Place, String> missing(TopElement element) {
        var found = new LinkedHashMap<Unread.Place, String>();
        missing(element, found);
        element.eAllContents().forEachRemaining(inner -> missing(inner, found));
        return found;
    }

    private static void missing(EObject owner, Map<Unread.Place, String> found) {
        owner.eClass().getEAllStructuralFeatures().forEach(feature -> problem(owner, feature)
                .ifPresent(sentence -> found.put(new Unread.Place(owner, feature), sentence)));
    }
}
