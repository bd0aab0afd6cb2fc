// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Qualification;

class NobodyQualifiedTest extends Mirror {

    NobodyQualifiedTest() {
        super("nobody-qualified", "procedures/renew-pto-actuator.xmi",
                b -> b.work().getQualifications().add(Qualification.AIRBAG),
                "work-actuator",
                b -> b.work().getQualifications().add(Qualification.WELDING));
    }
}
