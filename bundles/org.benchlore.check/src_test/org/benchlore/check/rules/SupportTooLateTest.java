// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class SupportTooLateTest extends Mirror {

    SupportTooLateTest() {
        super("support-too-late", "machines/dravholm-hl26.xmi",
                b -> b.work2("actuator-reach-strip").getSteps().move(0, 2),
                "step-pnp3",
                b -> b.work2("actuator-reach-strip").getSteps().move(1, 0));
    }
}
