// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * One element of a version of a file.
 *
 * @param key what it is known by in all versions
 * @param object the element
 * @param place where it is contained; null for the file's own element
 */
record Node(String key, EObject object, Place place) {

    /**
     * A list, or a single place, that contains elements.
     *
     * @param owner key of the containing element
     * @param reference the containment
     */
    record Place(String owner, EReference reference) {

        String key() {
            return owner + "." + reference.getName();
        }
    }
}
