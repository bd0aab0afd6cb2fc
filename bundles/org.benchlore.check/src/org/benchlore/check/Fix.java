// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.model.Address;
import org.eclipse.emf.ecore.EObject;

/**
 * How a problem is mended: makes one edit of a session, which can be undone.
 *
 * @param label what it does, as a button says it
 * @param at the element it changes
 * @param maker makes the edit
 */
public record Fix(String label, Address at, Maker maker) {

    /** Makes an edit of an element of a session's working copy. */
    @FunctionalInterface
    public interface Maker {
        /**
         * Makes the edit.
         *
         * @param session the session of the file
         * @param element the element of its working copy
         * @return the edit
         */
        Edit make(EditSession session, EObject element);
    }

    /**
     * Makes the edit for a session.
     *
     * @param session the session of the problem's file
     * @return an edit to be done at once
     * @throws IllegalArgumentException with a plain sentence if it is another file's, or the element is gone
     */
    public Edit edit(EditSession session) {
        if (!session.path().equals(at.path())) {
            throw new IllegalArgumentException("This mends " + at.path() + ", not " + session.path() + ": open that one");
        }
        var top = session.element();
        var element = at.id().equals(top.getId()) ? top : top.eResource().getEObject(at.id());
        if (element == null) {
            throw new IllegalArgumentException("What was to be mended is gone from " + at.path() + ": check it again");
        }
        return maker.make(session, element);
    }
}
