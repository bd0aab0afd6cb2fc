// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.eclipse.emf.ecore.util.EcoreUtil;

class HazardRepeatedTest extends Mirror {

    HazardRepeatedTest() {
        super("hazard-repeated", "procedures/renew-pto-clutch-pack.xmi",
                b -> b.step("step-q3kh").getHazards().add(EcoreUtil.copy(b.hazard("hazard-ds35"))),
                "hazard-ds35",
                b -> b.step("step-q3kh").getHazards().add(EcoreUtil.copy(b.hazard("hazard-nteu"))));
    }
}
