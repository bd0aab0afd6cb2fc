// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class HandsOutTest extends Mirror {

    HandsOutTest() {
        super("hands-out", "procedures/teach-in-pto-engagement.xmi",
                b -> { b.hazard("hazard-xpby").setAvoidance("Arm down."); b.hazard("hazard-9n8r").setAvoidance("Sleeves tight."); },
                "work-teach-in",
                b -> b.hazard("hazard-xpby").setAvoidance("Fingers out of the lever."));
    }
}
