// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.BookPackage.Literals;

class BoltsNeverTightenedTest extends Mirror {

    BoltsNeverTightenedTest() {
        super("bolts-never-tightened", "procedures/renew-pto-actuator.xmi",
                b -> {
                    b.fastening("fastening-actuator-r").eContainer().eUnset(Literals.STEP__FASTENINGS);
                    b.fastening("fastening-union-r").eContainer().eUnset(Literals.STEP__FASTENINGS);
                },
                "step-v89t",
                b -> b.fastening("fastening-actuator-r").eContainer().eUnset(Literals.STEP__FASTENINGS));
    }
}
