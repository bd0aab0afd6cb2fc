// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class InventedAmongRealTest extends Mirror {

    InventedAmongRealTest() {
        super("invented-among-real", "shop.xmi",
                b -> b.onlyInvented("parts/pto-actuator.xmi"),
                "parts/pto-actuator.xmi#pto-actuator",
                b -> b.onlyInvented("nothing"));
    }
}
