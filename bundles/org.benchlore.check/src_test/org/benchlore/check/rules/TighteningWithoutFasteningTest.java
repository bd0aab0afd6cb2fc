// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class TighteningWithoutFasteningTest extends Mirror {

    TighteningWithoutFasteningTest() {
        super("tightening-without-fastening", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-m3tb").setText("Mark the line. Then tighten the union."),
                "step-m3tb",
                b -> b.step("step-m3tb").setText("Mark the line. Do not tighten the union yet."));
    }
}
