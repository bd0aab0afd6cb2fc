// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class AirbagQualificationTest extends Mirror {

    AirbagQualificationTest() {
        super("qualification-airbag", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Unplug the air bag."),
                "work-actuator",
                b -> b.step("step-m3tb").setText("Mark the bag of bolts."));
    }
}
