// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.regex.Pattern;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;

/** A step that says tighten has a fastening with its torque. */
final class TighteningWithoutFastening extends ElementRule {

    private static final Pattern TOLD = Pattern.compile("(?i)\\b(re-?)?tighten\\b");
    private static final Pattern NOT_NOW = Pattern.compile("(?i)\\b(not|never|before you) (yet "
            + ")?(re-?)?tighten\\b|tighten[^.;]*\\bby hand\\b|hand.?tight");

    TighteningWithoutFastening() {
        super(new About("tightening-without-fastening", Severity.ERROR,
                "A step that says tighten has a fastening with its torque",
                "The apprentice has nothing to set the wrench to, and the torque is missing from the torque "
                        + "table.",
                "Sees the word 'tighten' itself, also in 'retighten', and not other words for it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getFastenings().isEmpty() && isTold(step.getText())) {
                findings.add(step, "The step says tighten, but no fastening with a torque stands with it: add one, or say "
                        + "that it is by hand");
            }
        }
    }

    private static boolean isTold(String text) {
        return text != null && (text.contains("ighten") || text.contains("IGHTEN")) && TOLD.matcher(text).find()
                && !NOT_NOW.matcher(text).find();
    }
}
