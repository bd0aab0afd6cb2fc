// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Status;

class WithdrawnWithoutReasonTest extends Mirror {

    WithdrawnWithoutReasonTest() {
        super("withdrawn-without-reason", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().setStatus(Status.WITHDRAWN),
                "renew-pto-actuator",
                b -> { b.procedure().setStatus(Status.WITHDRAWN); b.procedure().setWithdrawnReason("Ends with a short rod."); });
    }
}
