// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class StageWithoutValueTest extends Mirror {

    StageWithoutValueTest() {
        super("stage-without-value", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").getStages().get(1).setTorque(null),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").getStages().get(1).setText("in turn"));
    }
}
