// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class HazardInTextTest extends Mirror {

    HazardInTextTest() {
        super("hazard-in-text", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("WARNING: hot. Mark the line."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("Mark the line with a warning triangle."));
    }
}
