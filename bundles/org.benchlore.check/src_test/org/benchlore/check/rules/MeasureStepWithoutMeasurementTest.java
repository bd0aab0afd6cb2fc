// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class MeasureStepWithoutMeasurementTest extends Mirror {

    MeasureStepWithoutMeasurementTest() {
        super("measure-step-empty", "procedures/teach-in-pto-engagement.xmi",
                b -> b.step("step-9x3a").getMeasurements().clear(),
                "step-9x3a",
                b -> b.step("step-9x3a").setText("Read it."));
    }
}
