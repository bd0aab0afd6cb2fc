// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class AccessNeverOpenedTest extends Mirror {

    AccessNeverOpenedTest() {
        super("access-never-opened", "machines/dravholm-hl26.xmi",
                b -> b.access("guard-off").getStrip().getSteps().clear(),
                "guard-off",
                b -> b.access("over-pit").getStrip().getSteps().remove(0));
    }
}
