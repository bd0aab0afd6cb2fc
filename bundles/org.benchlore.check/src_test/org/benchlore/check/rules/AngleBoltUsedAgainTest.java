// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.RenewRule;

class AngleBoltUsedAgainTest extends Mirror {

    AngleBoltUsedAgainTest() {
        super("angle-bolt-used-again", "machines/dravholm-hl26.xmi",
                b -> b.fastening("fastening-pto-flange").setRenew(RenewRule.REUSE),
                "fastening-pto-flange",
                b -> b.fastening("fastening-pto-flange").setRenew(RenewRule.REUSE_WITHIN_LENGTH));
    }
}
