// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.InternalEObject;

class TeachInMissingTest extends Mirror {

    TeachInMissingTest() {
        super("teach-in-missing", "procedures/renew-pto-actuator.xmi",
                b -> { drop(b, "teach-in"); b.procedure().getWays().get(0).getNeeds().clear(); },
                "renew-pto-actuator",
                b -> drop(b, "leak-check"));
    }

    private static void drop(Spoil b, String word) {
        b.procedure().getAfterClosing().removeIf(one -> ((InternalEObject) one).eProxyURI().toString().contains(word));
    }
}
