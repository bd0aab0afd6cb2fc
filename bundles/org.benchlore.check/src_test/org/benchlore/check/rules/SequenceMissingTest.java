// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;
import org.benchlore.model.SequencePattern;

class SequenceMissingTest extends Mirror {

    SequenceMissingTest() {
        super("sequence-missing", "machines/dravholm-hl26.xmi",
                b -> b.fastening("fastening-guard").setPattern(SequencePattern.NOT_RECORDED),
                "fastening-guard",
                b -> b.fastening("fastening-guard").setPattern(SequencePattern.ANY_ORDER));
    }
}
