// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.util.EcoreUtil;

class TooManyHazardsTest extends Mirror {

    TooManyHazardsTest() {
        super("too-many-hazards", "procedures/renew-pto-actuator.xmi",
                b -> more(b, 3),
                "step-uder",
                b -> more(b, 2));
    }

    private static void more(Spoil b, int count) {
        for (int i = 0; i < count; i++) {
            b.step("step-uder").getHazards().add(EcoreUtil.copy(b.hazard("hazard-q6u4")));
        }
    }
}
