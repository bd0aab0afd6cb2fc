// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Stage;
import org.benchlore.model.StageKind;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What a new element in a list begins with: nearly always nothing. */
final class Beginnings {

    private Beginnings() {
    }

    /** A stage begins as one of torque, the usual one, which stands there to be seen and changed. */
    static EObject of(EClass type) {
        var element = EcoreUtil.create(type);
        if (type == Literals.STAGE) {
            ((Stage) element).setKind(StageKind.TORQUE);
        }
        return element;
    }
}
