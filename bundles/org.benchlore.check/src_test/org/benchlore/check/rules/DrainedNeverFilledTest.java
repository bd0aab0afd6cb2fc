// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class DrainedNeverFilledTest extends Mirror {

    DrainedNeverFilledTest() {
        super("drained-never-filled", "machines/dravholm-hl26.xmi",
                b -> b.access("gearbox-drained").getAfterClosing().clear(),
                "supplyuse-ut2x",
                b -> b.access("gearbox-drained").getNeeds().clear());
    }
}
