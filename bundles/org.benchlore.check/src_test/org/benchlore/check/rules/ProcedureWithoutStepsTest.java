// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class ProcedureWithoutStepsTest extends Mirror {

    ProcedureWithoutStepsTest() {
        super("procedure-without-steps", "procedures/renew-pto-actuator.xmi",
                b -> b.work().getSteps().clear(),
                "way-within-reach",
                b -> b.work().getSteps().remove(0));
    }
}
