// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.benchlore.model.BookPackage;
import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;

/** Which fields of a class hold long texts or references, picked out once for the whole model. */
final class Features {

    private static final Map<EClass, List<EAttribute>> LONG_TEXTS = byClass(type -> type.getEAllAttributes().stream()
            .filter(attribute -> attribute.getEAttributeType() == Literals.LONG_TEXT).toList());
    private static final Map<EClass, List<EReference>> REFERENCES = byClass(type -> type.getEAllReferences().stream()
            .filter(reference -> !reference.isContainment()).toList());

    private Features() {
    }

    private static <T> Map<EClass, T> byClass(Function<EClass, T> picker) {
        return BookPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .collect(Collectors.toUnmodifiableMap(type -> type, picker));
    }

    static List<EAttribute> longTexts(EClass type) {
        return LONG_TEXTS.getOrDefault(type, List.of());
    }

    /** References to elements that are not held by the one that refers. */
    static List<EReference> references(EClass type) {
        return REFERENCES.getOrDefault(type, List.of());
    }
}
