// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Need;

class AccessLoopTest extends Mirror {

    AccessLoopTest() {
        super("access-loop", "machines/dravholm-hl26.xmi",
                b -> b.access("container-off").getNeeds().add(need(b, "hook-arm-raised")),
                "container-off",
                b -> b.access("over-pit").getNeeds().add(need(b, "container-off")));
    }

    private static Need need(Spoil b, String access) {
        var need = BookFactory.eINSTANCE.createNeed();
        need.getAnyOf().add(b.access(access));
        return need;
    }
}
