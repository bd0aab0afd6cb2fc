// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class TorqueToolMissingTest extends Mirror {

    TorqueToolMissingTest() {
        super("torque-tool-missing", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").getStages().get(0).setTorque(Spoil.quantity("3 N·m")),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").getStages().get(1).setTorque(Spoil.quantity("60 N·m")));
    }
}
