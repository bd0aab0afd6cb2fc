// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Recorded;

class ListNotRecordedTest extends Mirror {

    ListNotRecordedTest() {
        super("list-not-recorded", "procedures/renew-pto-actuator.xmi",
                b -> b.work().setHazardsRecorded(Recorded.NOT_RECORDED),
                "work-actuator",
                b -> b.work().setTitle("Renew"));
    }
}
