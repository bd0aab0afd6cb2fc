// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class HazardWithoutAvoidanceTest extends Mirror {

    HazardWithoutAvoidanceTest() {
        super("hazard-without-avoidance", "procedures/renew-pto-actuator.xmi",
                b -> b.hazard("hazard-q6u4").setAvoidance(null),
                "hazard-q6u4",
                b -> b.hazard("hazard-q6u4").setAvoidance("Card."));
    }
}
