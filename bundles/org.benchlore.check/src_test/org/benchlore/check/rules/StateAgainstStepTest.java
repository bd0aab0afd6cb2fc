// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class StateAgainstStepTest extends Mirror {

    StateAgainstStepTest() {
        super("state-against-step", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Start the engine."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("Do not start the engine."));
    }
}
