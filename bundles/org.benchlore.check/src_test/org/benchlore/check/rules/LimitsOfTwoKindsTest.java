// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class LimitsOfTwoKindsTest extends Mirror {

    LimitsOfTwoKindsTest() {
        super("limits-of-two-kinds", "procedures/teach-in-pto-engagement.xmi",
                b -> b.measurement("measure-stop").setHigh(Spoil.quantity("12.6 bar")),
                "measure-stop",
                b -> b.measurement("measure-stop").setHigh(Spoil.quantity("1.26 cm")));
    }
}
