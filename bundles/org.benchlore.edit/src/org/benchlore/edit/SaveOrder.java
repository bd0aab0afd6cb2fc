// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Finds what is to be saved before a file, so that nothing on the disk leads to what is not there yet. */
public final class SaveOrder {

    private final Sessions sessions;

    /**
     * Makes it for a library.
     *
     * @param sessions the edit sessions of the library
     */
    public SaveOrder(Sessions sessions) {
        this.sessions = sessions;
    }

    /**
     * Finds the sessions that hold elements which a session leads to and which no file has yet.
     *
     * @param session a session of the library
     * @return those other sessions, in the order of the references to them
     */
    public List<EditSession> before(EditSession session) {
        var found = new LinkedHashSet<EditSession>();
        collect(session.element(), session, found);
        session.element().eAllContents().forEachRemaining(inner -> collect(inner, session, found));
        return List.copyOf(found);
    }

    private void collect(EObject owner, EditSession session, Set<EditSession> found) {
        owner.eClass().getEAllReferences().stream().filter(reference -> !reference.isContainment()
                && owner.eIsSet(reference)).flatMap(reference -> targets(owner, reference))
                .map(sessions.library()::addressOf).flatMap(Optional::stream).map(this::holder)
                .flatMap(Optional::stream).filter(other -> other != session).forEach(found::add);
    }

    private static Stream<EObject> targets(EObject owner, EReference reference) {
        var value = owner.eGet(reference, false);
        return value instanceof List<?> many ? many.stream().map(EObject.class::cast) : Stream.of((EObject) value);
    }

    private Optional<EditSession> holder(Address address) {
        return sessions.find(address.path()).filter(EditSession::isDirty)
                .filter(other -> other.element().getId().equals(address.id())
                        || other.element().eResource().getEObject(address.id()) != null)
                .filter(other -> sessions.library().element(address).isEmpty());
    }
}
