// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.Mirror;
import org.benchlore.model.Part;

class PriceStaleTest extends Mirror {

    PriceStaleTest() {
        super("price-stale", "parts/pto-actuator.xmi",
                b -> ((Part) b.top()).setPriceOn(LocalDate.of(2024, 11, 24)),
                "pto-actuator",
                b -> ((Part) b.top()).setPriceOn(LocalDate.of(2024, 11, 25)));
    }
}
