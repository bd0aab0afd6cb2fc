// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class MeasurementWithoutLimitsTest extends Mirror {

    MeasurementWithoutLimitsTest() {
        super("measurement-without-limits", "procedures/teach-in-pto-engagement.xmi",
                b -> {
                    b.measurement("measure-oil-temperature").setLow(null);
                    b.measurement("measure-oil-temperature").setHigh(null);
                },
                "measure-oil-temperature",
                b -> b.measurement("measure-oil-temperature").setLow(null));
    }
}
