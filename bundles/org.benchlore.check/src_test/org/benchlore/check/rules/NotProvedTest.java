// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class NotProvedTest extends Mirror {

    NotProvedTest() {
        super("not-proved", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().getVerifications().clear(),
                "renew-pto-actuator",
                b -> b.procedure().getVerifications().remove(0));
    }
}
