// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;

class ProcedureLoopTest extends Mirror {

    ProcedureLoopTest() {
        super("procedure-loop", "procedures/bleed-pto-engagement-circuit.xmi",
                b -> b.procedure().getBefore().add(Spoil.to(Literals.PROCEDURE, Procedure.class,
                        "procedures/teach-in-pto-engagement.xmi#teach-in-pto-engagement")),
                "bleed-pto-engagement-circuit",
                b -> b.procedure().getBefore().add(Spoil.to(Literals.PROCEDURE, Procedure.class,
                        "procedures/read-codes.xmi#read-codes")));
    }
}
