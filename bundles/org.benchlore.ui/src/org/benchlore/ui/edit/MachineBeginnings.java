// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import org.benchlore.model.Access;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Step;
import org.benchlore.model.Titled;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What a new element of a machine begins with. An access has its strip and refit, ready for their times. */
final class MachineBeginnings {

    private MachineBeginnings() {
    }

    static EObject of(EClass type) {
        var element = EcoreUtil.create(type);
        if (type == Literals.ACCESS) {
            ((Access) element).setStrip(BookFactory.eINSTANCE.createWork());
            ((Access) element).setRefit(BookFactory.eINSTANCE.createWork());
        }
        return element;
    }

    static EObject of(EClass type, String line) {
        var element = of(type);
        if (element instanceof Step step) {
            step.setText(line.strip());
        } else if (element instanceof Titled titled) {
            titled.setTitle(line.strip().replaceAll("\\s+", " "));
        }
        return element;
    }
}
