// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

import org.benchlore.measure.Amount;
import org.benchlore.measure.Quantity;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Fills every feature of an element: hostile texts, references that lead to nothing, one child in each place. */
final class Filler {

    static final String HOSTILE = "<script>alert('x')</script> & \u009b31m {part:nowhere} {step:nowhere} {odd} a-word-"
            + "that-is-much-longer-than-any-line-of-a-narrow-terminal";
    private static final int DEEPEST = 5;

    private int count;

    EObject fill(EObject element) {
        return fill(element, 0);
    }

    private EObject fill(EObject element, int depth) {
        for (var feature : element.eClass().getEAllStructuralFeatures()) {
            if (feature instanceof EReference reference) {
                refer(element, reference, depth);
            } else {
                set(element, feature, value(element, (EAttribute) feature));
            }
        }
        return element;
    }

    private static void set(EObject element, EStructuralFeature feature, Object value) {
        element.eSet(feature, feature.isMany() ? List.of(value) : value);
    }

    private void refer(EObject element, EReference reference, int depth) {
        var type = concrete(reference.getEReferenceType());
        var target = BookFactory.eINSTANCE.create(type);
        if (!reference.isContainment()) {
            set(element, reference, TestBook.to(target, "parts/nowhere.xmi", "nowhere"));
        } else if (depth < DEEPEST) {
            set(element, reference, fill(target, depth + 1));
        }
    }

    private static EClass concrete(EClass type) {
        return type.isAbstract() ? BookPackage.Literals.PART : type;
    }

    private Object value(EObject element, EAttribute attribute) {
        if (attribute.isID()) {
            return element instanceof TopElement ? TopIds.of(element.eClass()) : "inner-" + count++;
        }
        if (attribute.getEAttributeType() instanceof EEnum type) {
            var literals = type.getELiterals();
            return literals.get(count++ % literals.size()).getInstance();
        }
        return value(attribute.getEAttributeType().getInstanceClass());
    }

    private static Object value(Class<?> type) {
        if (type == String.class) {
            return HOSTILE;
        }
        if (type == Quantity.class) {
            return Quantity.parse("12.5 mm");
        }
        if (type == Amount.class) {
            return Amount.parse("12.50");
        }
        if (type == BigDecimal.class) {
            return BigDecimal.ONE;
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2026, 3, 1);
        }
        return type == boolean.class ? (Object) true : (Object) 2001;
    }
}
