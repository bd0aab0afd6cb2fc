// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class StepWithoutTextTest extends Mirror {

    StepWithoutTextTest() {
        super("step-without-text", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("\n "),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("Mark."));
    }
}
