// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class ForNoMachineTest extends Mirror {

    ForNoMachineTest() {
        super("for-no-machine", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().getApplicability().clear(),
                "renew-pto-actuator",
                b -> b.procedure().getApplicability().get(0).setYearFrom(2018));
    }
}
