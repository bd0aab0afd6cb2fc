// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class FasteningWithoutTorqueTest extends Mirror {

    FasteningWithoutTorqueTest() {
        super("fastening-without-torque", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").getStages().clear(),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").getStages().remove(0));
    }
}
