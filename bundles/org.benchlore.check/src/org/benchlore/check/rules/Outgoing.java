// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.benchlore.check.Subject;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * One reference out of a file.
 *
 * @param owner the element that refers
 * @param reference by which feature
 * @param target the unresolved reference
 */
record Outgoing(EObject owner, EReference reference, EObject target) {

    /** Every reference of an element to other files. */
    static List<Outgoing> of(Subject subject) {
        return subject.once(Outgoing.class, Outgoing::find);
    }

    private static List<Outgoing> find(Subject subject) {
        var found = new ArrayList<Outgoing>();
        for (var object : subject.everything()) {
            for (var reference : Features.references(object.eClass())) {
                add(object, reference, found);
            }
        }
        return found;
    }

    private static void add(EObject owner, EReference reference, List<Outgoing> found) {
        var value = owner.eGet(reference, false);
        if (value == null) {
            return;
        }
        for (var one : value instanceof Collection<?> many ? many : List.of(value)) {
            if (((EObject) one).eIsProxy()) {
                found.add(new Outgoing(owner, reference, (EObject) one));
            }
        }
    }
}
