// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Qualification;

class HighVoltageQualificationTest extends Mirror {

    HighVoltageQualificationTest() {
        super("qualification-high-voltage", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Mark the high voltage plug."),
                "work-actuator",
                b -> {
                    b.step("step-m3tb").setText("Mark the high voltage plug.");
                    b.work().getQualifications().add(Qualification.HIGH_VOLTAGE);
                });
    }
}
