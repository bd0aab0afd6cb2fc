// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.Part;

class DuplicateIdTest extends Mirror {

    DuplicateIdTest() {
        super("duplicate-id", "parts/pto-actuator.xmi",
                b -> b.copyTo("parts/second.xmi", "pto-actuator", Part.class),
                "parts/second.xmi#pto-actuator",
                b -> b.copyTo("parts/second.xmi", "second", Part.class));
    }
}
