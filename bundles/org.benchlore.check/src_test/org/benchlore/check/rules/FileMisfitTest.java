// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class FileMisfitTest extends Mirror {

    FileMisfitTest() {
        super("file-misfit", "procedures/renew-pto-actuator.xmi",
                b -> b.step("step-uder").setId("step-m3tb"),
                "renew-pto-actuator",
                b -> b.step("step-uder").setId("step-zzzz"));
    }
}
