// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class RenewedFastenerNotListedTest extends Mirror {

    RenewedFastenerNotListedTest() {
        super("renewed-fastener-not-listed", "procedures/renew-pto-actuator.xmi",
                b -> b.work().getParts().remove(1),
                "fastening-actuator-r",
                b -> b.work().getParts().get(1).setQuantity(4));
    }
}
