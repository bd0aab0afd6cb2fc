// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class SupportMissingTest extends Mirror {

    SupportMissingTest() {
        super("support-missing", "procedures/renew-sweeper-fan-bearings.xmi",
                SupportMissingTest::drop,
                "step-av3f",
                b -> {
                    drop(b);
                    b.hazard("hazard-44yu").setKind("Sharp edges");
                });
    }

    private static void drop(Spoil b) {
        b.hazard("hazard-44yu").setAvoidance("Gloves.");
        b.step("step-av3f").setText("Take off the inlet ring. Turn out the hub bolt and draw the fan wheel off.");
    }
}
