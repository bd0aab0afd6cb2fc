// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class StepTooLongTest extends Mirror {

    StepTooLongTest() {
        super("step-too-long", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("mark ".repeat(61)),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("mark ".repeat(60) + "{tool:torque-wrench-5-25}"));
    }
}
