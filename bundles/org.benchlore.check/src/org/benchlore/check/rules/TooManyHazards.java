// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;

/** No step has more than three hazards. */
final class TooManyHazards extends ElementRule {

    private static final int MOST = 3;

    TooManyHazards() {
        super(new About("too-many-hazards", Severity.WARNING,
                "No step has more than three hazards",
                "Of five panels none is read.",
                "Three is common practice, no source."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getHazards().size() > MOST) {
                findings.add(step, step.getHazards().size()
                        + " hazards stand before one step: split the step, or put what holds for the "
                        + "whole work before its first step");
            }
        }
    }
}
