// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class RefrigerantQualificationTest extends Mirror {

    RefrigerantQualificationTest() {
        super("qualification-refrigerant", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Recover the refrigerant."),
                "work-actuator",
                b -> b.step("step-m3tb").setText("Put it into the refrigerator."));
    }
}
