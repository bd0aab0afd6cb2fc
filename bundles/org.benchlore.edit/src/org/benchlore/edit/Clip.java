// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A copied element, ready to be pasted into any file, any number of times. References within it follow the paste. Those
 * to the rest of its file stay in that file; elsewhere they become references to that file, but for 'go to' a step,
 * which has a meaning within one procedure only and is left out.
 */
public final class Clip {

    private final String path;
    private final EObject original;
    private final EObject source;

    private Clip(String path, EObject source) {
        this.path = path;
        this.source = source;
        this.original = EcoreUtil.getRootContainer(source);
    }

    /**
     * Copies an element as it is now.
     *
     * @param session the session that holds it
     * @param part an element within the session's element
     * @return the copy
     */
    public static Clip of(EditSession session, EObject part) {
        var copier = new Copies.Copier();
        copier.copy(session.element());
        copier.copyReferences();
        return new Clip(session.path(), copier.get(part));
    }

    /**
     * Returns what the copied element is.
     *
     * @return an element that is not to be changed
     */
    public EObject content() {
        return source;
    }

    /** Makes an element for a file, with its old ids; to be renewed before it is put in. */
    EObject forFile(EditSession target) {
        var copier = new Copies.Copier();
        var copy = copier.copy(source);
        copier.copyReferences();
        boolean isSameFile = target.path().equals(path);
        lead(copy, isSameFile ? target.element() : null);
        copy.eAllContents().forEachRemaining(inner -> lead(inner, isSameFile ? target.element() : null));
        return copy;
    }

    private void lead(EObject object, TopElement file) {
        for (var reference : object.eClass().getEAllReferences()) {
            if (!reference.isContainment() && object.eIsSet(reference)) {
                lead(object, reference, file);
            }
        }
    }

    private void lead(EObject object, EReference reference, TopElement file) {
        if (!reference.isMany()) {
            object.eSet(reference, led((EObject) object.eGet(reference, false), file));
            return;
        }
        var found = new ArrayList<EObject>();
        for (var target : (List<?>) object.eGet(reference, false)) {
            var led = led((EObject) target, file);
            if (led != null) {
                found.add(led);
            }
        }
        object.eSet(reference, found);
    }

    private EObject led(EObject target, TopElement file) {
        if (target.eIsProxy() || EcoreUtil.getRootContainer(target) != original) {
            return target;
        }
        var id = Copies.id(target).orElse("");
        if (file != null) {
            return target == original ? file : file.eResource().getEObject(id);
        }
        return target instanceof Step ? null : References.to(target.eClass(), new Address(path, id));
    }
}
