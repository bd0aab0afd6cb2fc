// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.MachineState;

class MixedStatesTest extends Mirror {

    MixedStatesTest() {
        super("mixed-states", "procedures/renew-pto-actuator.xmi",
                b -> b.work().getStates().add(MachineState.RUNNING),
                "work-actuator",
                b -> b.work().getStates().add(MachineState.COLD));
    }
}
