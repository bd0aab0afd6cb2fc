// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;

/** A step to measure says what is measured. */
final class MeasureStepWithoutMeasurement extends ElementRule {

    MeasureStepWithoutMeasurement() {
        super(new About("measure-step-empty", Severity.WARNING,
                "A step to measure says what is measured",
                "There is no place to write the value down and nothing to compare it with."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getKind() == StepKind.MEASURE && step.getMeasurements().isEmpty()) {
                findings.add(step, "The step is one to measure, but no measurement stands with it: add it with its limits");
            }
        }
    }
}
