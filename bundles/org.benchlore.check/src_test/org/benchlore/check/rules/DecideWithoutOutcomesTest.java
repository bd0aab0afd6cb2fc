// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class DecideWithoutOutcomesTest extends Mirror {

    DecideWithoutOutcomesTest() {
        super("decide-without-outcomes", "procedures/teach-in-pto-engagement.xmi",
                b -> b.step("step-e2nd").getOutcomes().clear(),
                "step-e2nd",
                b -> b.step("step-e2nd").getOutcomes().remove(0));
    }
}
