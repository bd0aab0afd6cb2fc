// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class TorqueImplausibleTest extends Mirror {

    TorqueImplausibleTest() {
        super("torque-implausible", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").getStages().get(1).setTorque(Spoil.quantity("220 N·m")),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").getStages().get(1).setTorque(Spoil.quantity("24 N·m")));
    }
}
