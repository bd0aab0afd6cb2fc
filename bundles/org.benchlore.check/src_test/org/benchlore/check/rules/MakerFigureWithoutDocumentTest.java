// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.StatedBy;

class MakerFigureWithoutDocumentTest extends Mirror {

    MakerFigureWithoutDocumentTest() {
        super("maker-figure-without-document", "procedures/renew-pto-actuator.xmi",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.MAKER),
                "fastening-actuator-r",
                b -> b.fastening("fastening-actuator-r").setStatedBy(StatedBy.SHOP));
    }
}
