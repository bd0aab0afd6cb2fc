// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class HazardWithoutConsequenceTest extends Mirror {

    HazardWithoutConsequenceTest() {
        super("hazard-without-consequence", "procedures/renew-pto-actuator.xmi",
                b -> b.hazard("hazard-q6u4").setConsequence(" "),
                "hazard-q6u4",
                b -> b.hazard("hazard-q6u4").setKind("Oil"));
    }
}
