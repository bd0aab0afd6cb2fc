// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class TorqueUnusualTest extends Mirror {

    TorqueUnusualTest() {
        super("torque-unusual", "machines/dravholm-hl26.xmi",
                b -> {
                    b.fastening("fastening-pto-shaft").getStages().remove(0);
                    b.fastening("fastening-pto-shaft").getStages().get(0).setTorque(Spoil.quantity("25 N·m"));
                },
                "fastening-pto-shaft",
                b -> b.fastening("fastening-pto-shaft").getStages().get(1).setTorque(Spoil.quantity("62 N·m")));
    }
}
