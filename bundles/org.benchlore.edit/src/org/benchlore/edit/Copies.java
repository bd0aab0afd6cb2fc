// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import java.util.Optional;

import org.benchlore.model.Element;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Copies elements with their references: unresolved ones stay so, and nothing is shared with the original. */
final class Copies {

    private Copies() {
    }

    static <T extends EObject> T of(T object) {
        var copier = new Copier();
        @SuppressWarnings("unchecked")
        var copy = (T) copier.copy(object);
        copier.copyReferences();
        return copy;
    }

    /** A copier that makes a reference of its own for each unresolved one. */
    static final class Copier extends EcoreUtil.Copier {

        private static final long serialVersionUID = 1L;

        Copier() {
            super(false, true);
        }

        @Override
        public EObject get(Object key) {
            var known = super.get(key);
            if (known == null && key instanceof InternalEObject object && object.eIsProxy()) {
                var reference = EcoreUtil.create(object.eClass());
                ((InternalEObject) reference).eSetProxyURI(object.eProxyURI());
                return reference;
            }
            return known;
        }
    }

    static Optional<String> id(EObject object) {
        return object instanceof Element element ? Optional.ofNullable(element.getId()) : Optional.empty();
    }
}
