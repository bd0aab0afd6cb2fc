// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class ThreadUnreadableTest extends Mirror {

    ThreadUnreadableTest() {
        super("thread-unreadable", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setThread("M8,5 special"),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").setThread("M8x1.25"));
    }
}
