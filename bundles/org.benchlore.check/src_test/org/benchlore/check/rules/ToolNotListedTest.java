// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class ToolNotListedTest extends Mirror {

    ToolNotListedTest() {
        super("tool-not-listed", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Use {tool:angle-gauge}."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("Use {tool:torque-wrench-5-25}."));
    }
}
