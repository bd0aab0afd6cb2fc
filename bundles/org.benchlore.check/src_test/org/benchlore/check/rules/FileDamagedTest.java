// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class FileDamagedTest extends Mirror {

    FileDamagedTest() {
        super("file-damaged", "parts/pto-actuator.xmi",
                b -> b.top().setFormatVersion(9),
                "pto-actuator",
                b -> b.top().setFormatVersion(1));
    }
}
