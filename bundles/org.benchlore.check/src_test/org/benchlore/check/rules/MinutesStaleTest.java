// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.Mirror;

class MinutesStaleTest extends Mirror {

    MinutesStaleTest() {
        super("minutes-stale", "procedures/renew-pto-actuator.xmi",
                b -> b.work().setMinutesCheckedOn(LocalDate.of(2024, 11, 24)),
                "work-actuator",
                b -> b.work().setMinutesCheckedOn(LocalDate.of(2024, 11, 25)));
    }
}
