// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class AccessNeverClosedTest extends Mirror {

    AccessNeverClosedTest() {
        super("access-never-closed", "machines/dravholm-hl26.xmi",
                b -> b.access("guard-off").setRefit(null),
                "guard-off",
                b -> b.access("guard-off").getRefit().getSteps().remove(0));
    }
}
