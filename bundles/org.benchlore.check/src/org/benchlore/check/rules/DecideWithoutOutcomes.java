// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;

/** A step to decide says what may be found and what then. */
final class DecideWithoutOutcomes extends ElementRule {

    DecideWithoutOutcomes() {
        super(new About("decide-without-outcomes", Severity.ERROR,
                "A step to decide says what may be found and what then",
                "The apprentice stands before a question without an answer."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getKind() == StepKind.DECIDE && step.getOutcomes().size() < 2) {
                findings.add(step, "The step is one to decide, but it has "
                        + (step.getOutcomes().isEmpty() ? "no answer" : "one answer only")
                        + ": write each answer and what then");
            }
        }
    }
}
