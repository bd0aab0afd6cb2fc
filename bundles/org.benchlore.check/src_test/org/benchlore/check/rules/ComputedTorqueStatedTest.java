// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.StatedBy;

class ComputedTorqueStatedTest extends Mirror {

    ComputedTorqueStatedTest() {
        super("computed-torque-stated", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.CALCULATED),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.SHOP));
    }
}
