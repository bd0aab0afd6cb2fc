// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;

/** A step can be kept in the head: at most 60 words. */
final class StepTooLong extends ElementRule {

    private static final int MOST = 60;

    StepTooLong() {
        super(new About("step-too-long", Severity.WARNING,
                "A step can be kept in the head: at most 60 words",
                "Of a long step the end is forgotten on the way to the machine.",
                "Sixty words are common practice, no source. Links are not counted."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            int length = subject.text(step).length();
            if (length > MOST) {
                findings.add(step, "The step has " + length + " words: split it, and put the reason under 'why'");
            }
        }
    }
}
