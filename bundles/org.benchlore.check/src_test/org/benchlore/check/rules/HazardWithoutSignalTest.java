// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Signal;

class HazardWithoutSignalTest extends Mirror {

    HazardWithoutSignalTest() {
        super("hazard-without-signal", "procedures/renew-pto-actuator.xmi",
                b -> b.hazard("hazard-q6u4").setSignal(Signal.NOT_RECORDED),
                "hazard-q6u4",
                b -> b.hazard("hazard-q6u4").setSignal(Signal.NOTICE));
    }
}
