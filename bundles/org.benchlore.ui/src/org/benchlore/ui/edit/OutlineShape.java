// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EObject;

/** What the outline shows of an element. A heading stands for a list of the element and is that list's reference. */
interface OutlineShape {

    /** The element itself, which stands at the top. */
    TopElement root();

    /** What stands below a node, in order. */
    List<EObject> children(EObject node);

    /** What a node is called. */
    String words(EObject node);

    /** Name of the icon of a node. */
    Optional<String> icon(EObject node);

    /** Whether what stands below a node is seen at first. */
    boolean isOpen(EObject node);

    /** What is read out of the outline as a whole. */
    String name();

    /** Number and first line of a step, titles in the place of references. */
    static String words(Step step, UnaryOperator<String> plain) {
        int number = ((List<?>) step.eContainer().eGet(step.eContainmentFeature())).indexOf(step) + 1;
        var text = step.getText() == null ? "" : plain.apply(step.getText()).strip().lines().findFirst().orElse("");
        return number + ". " + (text.isEmpty() ? Messages.stepEmpty : text);
    }
}
