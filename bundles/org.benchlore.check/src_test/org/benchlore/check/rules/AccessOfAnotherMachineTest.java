// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Machine;

class AccessOfAnotherMachineTest extends Mirror {

    AccessOfAnotherMachineTest() {
        super("access-of-another-machine", "procedures/renew-pto-actuator.xmi",
                b -> b.procedure().getApplicability().get(0)
                        .setMachine(Spoil.to(Literals.MACHINE, Machine.class, "machines/quillfen-s6.xmi#quillfen-s6")),
                "way-within-reach",
                b -> b.procedure().getApplicability().get(0).setYearFrom(2018));
    }
}
