// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class HazardAfterStepTest extends Mirror {

    HazardAfterStepTest() {
        super("hazard-after-step", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-v89t").getHazards().addAll(b.step("step-uder").getHazards()),
                "hazard-q6u4",
                b -> b.step("step-m3tb").getHazards().addAll(b.step("step-uder").getHazards()));
    }
}
