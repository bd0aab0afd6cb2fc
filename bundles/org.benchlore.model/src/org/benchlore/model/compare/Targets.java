// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Element;
import org.benchlore.model.Kind;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads where references lead without following them. */
public final class Targets {

    private Targets() {
    }

    /**
     * Returns where each value of a reference leads, in order.
     *
     * @param owner the element that refers
     * @param reference a reference that is no containment
     * @return {@code path#id} for other files, {@code #id} within the element's own file
     */
    public static List<String> of(EObject owner, EReference reference) {
        return objects(owner, reference).stream().map(target -> text(owner, target)).toList();
    }

    /**
     * Returns where one target of a reference stands.
     *
     * @param owner the element that refers
     * @param target an element of the same file or an unresolved reference
     * @return {@code path#id} for other files, {@code #id} within the owner's own file
     */
    public static String text(EObject owner, EObject target) {
        if (!target.eIsProxy()) {
            return inFile(target).map(id -> "#" + id).orElse("#");
        }
        var uri = ((InternalEObject) target).eProxyURI();
        var path = String.join("/", uri.segments());
        return path.equals(ownPath(owner)) ? "#" + uri.fragment() : path + "#" + uri.fragment();
    }

    /** The values of a reference or a containment as a list, not resolved. */
    static List<EObject> objects(EObject owner, EReference reference) {
        var value = owner.eGet(reference, false);
        if (value == null) {
            return List.of();
        }
        var found = new ArrayList<EObject>();
        for (var one : value instanceof Collection<?> many ? many : List.of(value)) {
            found.add((EObject) one);
        }
        return found;
    }

    /** The id of an element, if it is one and has one. */
    static Optional<String> inFile(EObject object) {
        return object instanceof Element element ? Optional.ofNullable(element.getId()) : Optional.empty();
    }

    private static String ownPath(EObject owner) {
        var top = EcoreUtil.getRootContainer(owner);
        try {
            return Kind.of(top.eClass()).filter(kind -> inFile(top).isPresent())
                    .map(kind -> kind.path(inFile(top).orElseThrow())).orElse("");
        } catch (IllegalArgumentException e) {
            return "";
        }
    }
}
