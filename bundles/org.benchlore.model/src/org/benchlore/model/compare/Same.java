// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Tells whether two elements say the same: values as written, references by address, children in order. */
public final class Same {

    private Same() {
    }

    /**
     * Compares two elements with everything in them.
     *
     * @param one an element
     * @param other another version of it
     * @return true if a save of both would give the same content
     */
    public static boolean deep(EObject one, EObject other) {
        if (one.eClass() != other.eClass()) {
            return false;
        }
        return one.eClass().getEAllStructuralFeatures().stream().allMatch(feature -> isSame(one, other, feature));
    }

    private static boolean isSame(EObject one, EObject other, EStructuralFeature feature) {
        if (!(feature instanceof EReference reference) || !reference.isContainment()) {
            return texts(one, feature).equals(texts(other, feature));
        }
        var first = Targets.objects(one, reference);
        var second = Targets.objects(other, reference);
        if (first.size() != second.size()) {
            return false;
        }
        for (int i = 0; i < first.size(); i++) {
            if (!deep(first.get(i), second.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** The values of an attribute as they are written, or where a reference leads; empty where nothing is set. */
    static List<String> texts(EObject owner, EStructuralFeature feature) {
        if (feature instanceof EReference reference) {
            return Targets.of(owner, reference);
        }
        var value = owner.eGet(feature);
        if (value == null) {
            return List.of();
        }
        var type = ((EAttribute) feature).getEAttributeType();
        var many = value instanceof Collection<?> values ? values : List.of(value);
        return many.stream().map(one -> EcoreUtil.convertToString(type, one)).toList();
    }
}
