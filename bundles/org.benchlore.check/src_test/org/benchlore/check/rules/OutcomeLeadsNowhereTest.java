// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Outcome;

class OutcomeLeadsNowhereTest extends Mirror {

    OutcomeLeadsNowhereTest() {
        super("outcome-leads-nowhere", "procedures/teach-in-pto-engagement.xmi",
                b -> b.get("outcome-avtb", Outcome.class).setThen(null),
                "outcome-avtb",
                b -> b.get("outcome-narp", Outcome.class).setThen(null));
    }
}
