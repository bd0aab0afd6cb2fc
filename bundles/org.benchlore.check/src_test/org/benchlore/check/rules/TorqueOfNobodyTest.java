// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.StatedBy;

class TorqueOfNobodyTest extends Mirror {

    TorqueOfNobodyTest() {
        super("torque-of-nobody", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.NOT_RECORDED),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.MAKER));
    }
}
