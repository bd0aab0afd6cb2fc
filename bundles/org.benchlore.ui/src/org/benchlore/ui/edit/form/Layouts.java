// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.benchlore.edit.RecordedLists;
import org.benchlore.model.BookPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Which fields the form of a class has, in sections. A class that is not named here has all its fields in one. */
final class Layouts {

    /** Kept by the program, or shown in the outline. */
    private static final Set<EStructuralFeature> HIDDEN = Set.of(Literals.ELEMENT__ID,
            Literals.TOP_ELEMENT__FORMAT_VERSION, Literals.TOP_ELEMENT__INVENTED, Literals.PROCEDURE__REVIEWED_HASH,
            Literals.PROCEDURE__WAYS, Literals.WORK__STEPS);

    private static final Set<EStructuralFeature> REQUIRED = Set.of(Literals.FIELD_NOTE__TEXT,
            Literals.TOP_ELEMENT__TITLE);

    /** Others find these by their names. */
    private static final Set<EClass> NAMED = Set.of(Literals.COMPONENT, Literals.ACCESS, Literals.FUNCTION,
            Literals.CAUSE);

    private static final Map<EStructuralFeature, Integer> LINES = Map.of(Literals.FIELD_NOTE__TEXT, 7,
            Literals.STEP__TEXT, 4, Literals.FIELD_NOTE__FINDING, 4, Literals.DOCUMENT__GIST, 6);
    private static final int USUAL_LINES = 3;

    private static final Map<EClass, List<Section>> SECTIONS = sections();

    private Layouts() {
    }

    private static Map<EClass, List<Section>> sections() {
        var all = new HashMap<EClass, List<Section>>();
        all.putAll(RecordLayouts.all());
        all.putAll(WorkLayouts.all());
        all.putAll(MachineLayouts.all());
        all.putAll(JobLayouts.all());
        return Map.copyOf(all);
    }

    static List<Section> of(EClass type) {
        var known = SECTIONS.get(type);
        return known != null ? known : List.of(new Section("", plain(type)));
    }

    /** The form of an element within that of another one. */
    static List<Section> within(EStructuralFeature place, EClass type) {
        return place == Literals.ACCESS__STRIP || place == Literals.ACCESS__REFIT ? MachineLayouts.times() : of(type);
    }

    private static List<EStructuralFeature> plain(EClass type) {
        var fields = new ArrayList<EStructuralFeature>();
        for (var feature : type.getEAllStructuralFeatures()) {
            if (!HIDDEN.contains(feature) && !isBesideList(feature)) {
                fields.add(feature);
            }
        }
        return fields;
    }

    /** Whether a list was recorded is asked beside the list. */
    private static boolean isBesideList(EStructuralFeature feature) {
        return feature instanceof EAttribute attribute && RecordedLists.listOf(attribute).isPresent();
    }

    static boolean isRequired(EObject owner, EStructuralFeature feature) {
        return feature == Literals.TITLED__TITLE && NAMED.contains(owner.eClass())
                || REQUIRED.contains(feature) && !(owner.eClass() == Literals.FIELD_NOTE
                && feature == Literals.TOP_ELEMENT__TITLE);
    }

    static int lines(EStructuralFeature feature) {
        return LINES.getOrDefault(feature, USUAL_LINES);
    }
}
