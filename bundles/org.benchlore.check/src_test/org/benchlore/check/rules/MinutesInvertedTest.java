// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class MinutesInvertedTest extends Mirror {

    MinutesInvertedTest() {
        super("minutes-inverted", "procedures/renew-pto-actuator.xmi",
                b -> b.work().setMinutesUsual(Spoil.quantity("1 h")),
                "work-actuator",
                b -> b.work().setMinutesUsual(Spoil.quantity("35 min")));
    }
}
