// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.eclipse.emf.ecore.InternalEObject;

class BleedMissingTest extends Mirror {

    BleedMissingTest() {
        super("bleed-missing", "procedures/renew-pto-actuator.xmi",
                b -> {
                    drop(b, "bleed");
                    b.procedure().getWays().get(0).getNeeds().clear();
                    b.step("step-m3tb").setText("Mark the line.");
                },
                "step-uder",
                b -> drop(b, "bleed"));
    }

    private static void drop(Spoil b, String word) {
        b.procedure().getAfterClosing().removeIf(one -> ((InternalEObject) one).eProxyURI().toString().contains(word));
    }
}
