// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class LiftingQualificationTest extends Mirror {

    LiftingQualificationTest() {
        super("qualification-lifting", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Lift it with the crane."),
                "work-actuator",
                b -> b.step("step-m3tb").setText("Lift it with two hands."));
    }
}
