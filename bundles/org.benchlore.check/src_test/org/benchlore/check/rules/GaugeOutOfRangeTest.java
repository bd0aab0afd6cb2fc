// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;

class GaugeOutOfRangeTest extends Mirror {

    GaugeOutOfRangeTest() {
        super("gauge-out-of-range", "procedures/test-pto-engagement-circuit.xmi",
                b -> b.measurement("measure-engagement-pressure").setHigh(Spoil.quantity("95 bar")),
                "measure-engagement-pressure",
                b -> b.measurement("measure-engagement-pressure").setHigh(Spoil.quantity("60 bar")));
    }
}
