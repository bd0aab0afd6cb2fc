// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.RenewRule;

class ReuseLengthMissingTest extends Mirror {

    ReuseLengthMissingTest() {
        super("reuse-length-missing", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setRenew(RenewRule.REUSE_WITHIN_LENGTH),
                "fastening-actuator-r",
                b -> {
                    b.fastening("fastening-actuator-r").setRenew(RenewRule.REUSE_WITHIN_LENGTH);
                    b.fastening("fastening-actuator-r").setMaxLength(Spoil.quantity("46 mm"));
                });
    }
}
