// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import org.benchlore.model.Address;
import org.benchlore.store.LibraryUris;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Makes references to elements of other files: they stay unresolved, and the library follows them. */
public final class References {

    private References() {
    }

    /**
     * Makes an unresolved reference.
     *
     * @param type a concrete class of the model, that of the element referred to
     * @param address where that element stands
     * @return an object to be set as the value of a reference
     */
    public static EObject to(EClass type, Address address) {
        var reference = EcoreUtil.create(type);
        ((InternalEObject) reference).eSetProxyURI(LibraryUris.of(address.path()).appendFragment(address.id()));
        return reference;
    }
}
