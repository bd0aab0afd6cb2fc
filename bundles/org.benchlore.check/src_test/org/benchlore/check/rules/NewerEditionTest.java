// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class NewerEditionTest extends Mirror {

    NewerEditionTest() {
        super("newer-edition", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().getSources().get(0).setEdition("1"),
                "renew-pto-actuator",
                b -> b.procedure().getSources().get(0).setEdition(" 2 "));
    }
}
