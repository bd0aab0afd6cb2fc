// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class SupportMissingTest extends Mirror {

    SupportMissingTest() {
        super("support-missing", "procedures/renew-sweeper-fan-bearings.xmi",
                b -> b.hazard("hazard-44yu").setAvoidance("Gloves."),
                "step-av3f",
                b -> { b.hazard("hazard-44yu").setAvoidance("Gloves."); b.hazard("hazard-44yu").setKind("Sharp edges"); });
    }
}
