// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.check.Spoil;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Part;
import org.benchlore.model.PartUse;

class PartDoesNotFitTest extends Mirror {

    PartDoesNotFitTest() {
        super("part-does-not-fit", "procedures/renew-pto-actuator.xmi",
                b -> b.get("partuse-bm6p", PartUse.class)
                        .setPart(Spoil.to(Literals.PART, Part.class, "parts/sweeper-fan-belt.xmi#sweeper-fan-belt")),
                "partuse-bm6p",
                b -> b.get("partuse-bm6p", PartUse.class)
                        .setPart(Spoil.to(Literals.PART, Part.class, "parts/pto-control-unit.xmi#pto-control-unit")));
    }
}
