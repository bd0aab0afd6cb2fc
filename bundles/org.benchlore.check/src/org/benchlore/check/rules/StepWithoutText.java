// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;

/** Every step says what to do. */
final class StepWithoutText extends ElementRule {

    StepWithoutText() {
        super(new About("step-without-text", Severity.ERROR,
                "Every step says what to do",
                "An empty step is signed and nothing was done."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (Works.isBlank(step.getText())) {
                findings.add(step, "The step says nothing: write what to do, or remove it");
            }
        }
    }
}
