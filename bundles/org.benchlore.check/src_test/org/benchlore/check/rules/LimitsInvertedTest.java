// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class LimitsInvertedTest extends Mirror {

    LimitsInvertedTest() {
        super("limits-inverted", "procedures/teach-in-pto-engagement.xmi",
                b -> b.measurement("measure-oil-temperature").setLow(Spoil.quantity("50 °C")),
                "measure-oil-temperature",
                b -> b.measurement("measure-oil-temperature").setLow(Spoil.quantity("45 °C")));
    }
}
