// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.util.EcoreUtil;

class HazardOnEveryPageTest extends Mirror {

    HazardOnEveryPageTest() {
        super("hazard-on-every-page", "procedures/leak-check-pto.xmi",
                b -> everywhere(b, 7),
                "procedures/bleed-pto-engagement-circuit.xmi#bleed-pto-engagement-circuit",
                b -> everywhere(b, 1));
    }

    /** Puts the hazard of oil under pressure into more procedures. */
    private static void everywhere(Spoil b, int count) {
        var said = b.hazard("hazard-hbdm");
        for (var name : List.of("read-codes", "fill-gearbox-oil", "check-sweeper-fan-vibration", "renew-pto-pack-filter").subList(0, Math.min(count, 4))) {
            b.other("procedures/" + name + ".xmi", other -> other.work().getHazards().add(EcoreUtil.copy(said)));
        }
    }
}
