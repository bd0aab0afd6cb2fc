// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.FieldText;
import org.benchlore.edit.References;
import org.benchlore.model.Address;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Fills entries that are in no file yet, and changes references of those that are only where they change. */
final class Fields {

    private final EditSession session;

    Fields(EditSession session) {
        this.session = session;
    }

    void read(EObject entry, EAttribute field, String typed) {
        FieldText.read(field, typed).ifPresent(value -> entry.eSet(field, value));
    }

    void point(EObject entry, EReference reference, Optional<Address> to) {
        to.ifPresent(address -> entry.eSet(reference, References.to(reference.getEReferenceType(), address)));
    }

    @SuppressWarnings("unchecked")
    void pointAll(EObject entry, EReference reference, List<Address> to) {
        var list = (List<EObject>) entry.eGet(reference);
        to.stream().distinct().forEach(address -> list.add(References.to(reference.getEReferenceType(), address)));
    }

    Edit reference(EObject owner, EReference reference, Optional<Address> to) {
        return session.library().addressOf((EObject) owner.eGet(reference)).equals(to)
                ? Edits.all("change a reference", List.of()) : session.edits().reference(owner, reference, to);
    }
}
