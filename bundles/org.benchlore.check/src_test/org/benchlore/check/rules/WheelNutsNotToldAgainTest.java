// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class WheelNutsNotToldAgainTest extends Mirror {

    WheelNutsNotToldAgainTest() {
        super("wheel-nuts-not-told", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setPlace("Wheel nuts, front left"),
                "fastening-actuator-r",
                b -> {
                    b.fastening("fastening-actuator-r").setPlace("Wheel nuts, front left");
                    b.procedure().getClosingConditions().get(0)
                            .setText("The driver was told to have the wheel nuts retightened after 50 km.");
                });
    }
}
