// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class FrictionDustTest extends Mirror {

    FrictionDustTest() {
        super("friction-dust", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-rgsk").setText("Brush the brake drum clean."),
                "step-rgsk",
                b -> {
                    b.step("step-rgsk").setText("Brush the brake drum clean.");
                    b.hazard("hazard-q6u4").setAvoidance("Take the dust up wet. Never use the air line.");
                });
    }
}
