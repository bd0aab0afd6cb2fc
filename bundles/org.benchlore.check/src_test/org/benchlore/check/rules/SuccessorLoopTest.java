// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Part;

class SuccessorLoopTest extends Mirror {

    SuccessorLoopTest() {
        super("successor-loop", "parts/pto-actuator-first.xmi",
                b -> b.other("parts/pto-actuator.xmi", other -> replace(other, "parts/pto-actuator-first.xmi#pto-actuator-first")),
                "pto-actuator-first",
                b -> b.other("parts/pto-actuator.xmi", other -> replace(other, "parts/pto-control-unit.xmi#pto-control-unit")));
    }

    private static void replace(Spoil part, String by) {
        ((Part) part.top()).setSupersededBy(Spoil.to(Literals.PART, Part.class, by));
    }
}
