// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Recorded;

class ListContradictedTest extends Mirror {

    ListContradictedTest() {
        super("list-contradicted", "procedures/renew-pto-actuator.xmi",
                b -> b.work().setPartsRecorded(Recorded.NONE),
                "work-actuator",
                b -> b.work().setPartsRecorded(Recorded.NOT_RECORDED));
    }
}
