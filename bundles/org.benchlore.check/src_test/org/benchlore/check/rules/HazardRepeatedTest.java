// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.util.EcoreUtil;

class HazardRepeatedTest extends Mirror {

    HazardRepeatedTest() {
        super("hazard-repeated", "procedures/renew-pto-clutch-pack.xmi",
                b -> again(b, "step-q3kh", "step-d6mq"),
                "hazard-ds35",
                b -> again(b, "step-q3kh"));
    }

    /** The procedure has it at two steps. */
    private static void again(Spoil b, String... steps) {
        List.of(steps).forEach(step -> b.step(step).getHazards().add(EcoreUtil.copy(b.hazard("hazard-ds35"))));
    }
}
