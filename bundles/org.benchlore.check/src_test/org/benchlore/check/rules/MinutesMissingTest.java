// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class MinutesMissingTest extends Mirror {

    MinutesMissingTest() {
        super("minutes-missing", "procedures/renew-pto-actuator.xmi",
                b -> b.work().setMinutesUsual(null),
                "work-actuator",
                b -> { b.work().setMinutesUsual(null); b.procedure().setWholeJobUsual(Spoil.quantity("2 h")); });
    }
}
