// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Puts the content of another version into an element, all fields at once, and changes the base along with it. */
final class ReplaceContent extends AbstractCommand {

    private final EObject element;
    private final EObject version;
    private final Consumer<Boolean> rebase;
    private Map<EStructuralFeature, Object> before;
    private Map<EStructuralFeature, Object> after;

    /**
     * Makes the command.
     *
     * @param element the element that stays itself
     * @param version its new content; it is emptied
     * @param rebase told true when the new content is in place, false when the old one is again
     */
    ReplaceContent(EObject element, EObject version, Consumer<Boolean> rebase) {
        this.element = element;
        this.version = version;
        this.rebase = rebase;
    }

    @Override
    protected boolean prepare() {
        return element.eClass() == version.eClass();
    }

    @Override
    public void execute() {
        before = content(element);
        follow();
        after = content(version);
        put(after);
        rebase.accept(true);
    }

    /** References to the other version's own element become references to this one. */
    private void follow() {
        version.eAllContents().forEachRemaining(this::follow);
        follow(version);
    }

    @SuppressWarnings("unchecked")
    private void follow(EObject inner) {
        for (var reference : inner.eClass().getEAllReferences()) {
            var value = reference.isContainment() ? null : inner.eGet(reference, false);
            if (value == version) {
                inner.eSet(reference, element);
            } else if (value instanceof List<?> many && many.contains(version)) {
                ((List<EObject>) many).replaceAll(one -> one == version ? element : one);
            }
        }
    }

    private static Map<EStructuralFeature, Object> content(EObject object) {
        var content = new LinkedHashMap<EStructuralFeature, Object>();
        for (var feature : object.eClass().getEAllStructuralFeatures()) {
            if (object.eIsSet(feature)) {
                var value = object.eGet(feature, false);
                content.put(feature, value instanceof Collection<?> many ? new ArrayList<>(many) : value);
            }
        }
        return content;
    }

    private void put(Map<EStructuralFeature, Object> content) {
        for (var feature : element.eClass().getEAllStructuralFeatures()) {
            if (content.containsKey(feature)) {
                element.eSet(feature, content.get(feature));
            } else {
                element.eUnset(feature);
            }
        }
    }

    @Override
    public void undo() {
        put(before);
        rebase.accept(false);
    }

    @Override
    public void redo() {
        put(after);
        rebase.accept(true);
    }

    @Override
    public Collection<?> getAffectedObjects() {
        return List.of(element);
    }
}
