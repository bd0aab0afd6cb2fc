// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.RenewRule;

class RenewRuleMissingTest extends Mirror {

    RenewRuleMissingTest() {
        super("renew-rule-missing", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setRenew(RenewRule.NOT_RECORDED),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").setRenew(RenewRule.REUSE));
    }
}
