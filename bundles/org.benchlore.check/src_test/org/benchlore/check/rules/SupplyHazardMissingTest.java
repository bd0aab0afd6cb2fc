// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Signal;

class SupplyHazardMissingTest extends Mirror {

    SupplyHazardMissingTest() {
        super("supply-hazard-missing", "procedures/renew-pto-clutch-pack.xmi",
                b -> b.step("step-svqz").getHazards().clear(),
                "supplyuse-2zje",
                b -> b.hazard("hazard-v9t8").setSignal(Signal.DANGER));
    }
}
