// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class QuestionWithoutAnswersTest extends Mirror {

    QuestionWithoutAnswersTest() {
        super("question-without-answers", "procedures/renew-pto-pack-filter.xmi",
                b -> b.step("step-bdmb").getOutcomes().clear(),
                "step-bdmb",
                b -> b.step("step-bdmb").getOutcomes().remove(0));
    }
}
