// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.Access;
import org.benchlore.model.Status;
import org.eclipse.emf.ecore.InternalEObject;

class WithdrawnReferenceTest extends Mirror {

    WithdrawnReferenceTest() {
        super("withdrawn-reference", "procedures/renew-pto-pack-filter.xmi",
                b -> b.other("procedures/leak-check-pto.xmi", leak -> leak.procedure().setStatus(Status.WITHDRAWN))
                        .other("machines/dravholm-hl26.xmi", WithdrawnReferenceTest::forget)
                        .other("procedures/renew-pto-actuator.xmi", pto -> drop(pto, "leak"))
                        .other("procedures/renew-pto-clutch-pack.xmi", pto -> drop(pto, "leak")),
                "renew-pto-pack-filter",
                b -> b.other("procedures/leak-check-pto.xmi", leak -> leak.procedure().setTitle("Look for leaks")));
    }

    private static void drop(Spoil b, String word) {
        b.procedure().getAfterClosing().removeIf(one -> ((InternalEObject) one).eProxyURI().toString().contains(word));
    }

    private static void forget(Spoil machine) {
        machine.all(Access.class).forEach(access -> access.getAfterClosing()
                .removeIf(one -> ((InternalEObject) one).eProxyURI().toString().contains("leak")));
    }
}
