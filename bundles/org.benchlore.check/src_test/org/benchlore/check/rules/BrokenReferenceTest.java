// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class BrokenReferenceTest extends Mirror {

    BrokenReferenceTest() {
        super("broken-reference", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("See {procedure:renew-nothing}."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("See {procedure:read-codes} and {step:step-uder}."));
    }
}
