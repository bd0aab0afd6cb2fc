// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class SignOffMissingTest extends Mirror {

    SignOffMissingTest() {
        super("sign-off-missing", "machines/dravholm-hl26.xmi",
                b -> b.step("step-kz3g").setSignOff(false),
                "step-kz3g",
                b -> b.step("step-hxct").setSignOff(false));
    }
}
