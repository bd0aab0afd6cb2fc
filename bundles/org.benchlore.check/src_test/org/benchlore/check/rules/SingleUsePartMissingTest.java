// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class SingleUsePartMissingTest extends Mirror {

    SingleUsePartMissingTest() {
        super("single-use-part-missing", "procedures/renew-pto-actuator.xmi",
                b -> b.work().getParts().remove(2),
                "step-3sb5",
                b -> b.step("step-m3tb").setText("Look for {part:pto-control-unit}."));
    }
}
