// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;

class WithdrawnWithoutSuccessorTest extends Mirror {

    WithdrawnWithoutSuccessorTest() {
        super("withdrawn-without-successor", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().setStatus(Status.WITHDRAWN),
                "renew-pto-actuator",
                b -> {
                    b.procedure().setStatus(Status.WITHDRAWN);
                    b.procedure().setReplacedBy(Spoil.to(Literals.PROCEDURE, Procedure.class, "procedures/read-codes.xmi#read-codes"));
                });
    }
}
