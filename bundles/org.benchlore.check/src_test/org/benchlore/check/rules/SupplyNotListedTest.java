// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class SupplyNotListedTest extends Mirror {

    SupplyNotListedTest() {
        super("supply-not-listed", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("A drop of {supply:gearbox-oil}."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("A drop of {supply:engagement-fluid}."));
    }
}
