// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.regex.Pattern;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;

/** A warning stands as a hazard before its step, not in the text. */
final class HazardInText extends ElementRule {

    private static final Pattern SIGNAL = Pattern.compile("\\b(DANGER|WARNING|CAUTION|NOTICE)\\b|\\b(Danger|Warning|Caution)[:!]");

    HazardInText() {
        super(new About("hazard-in-text", Severity.WARNING,
                "A warning stands as a hazard before its step, not in the text",
                "In the text it is read after the hand is already there, and it is lost when steps are put "
                        + "together."));
    }

    /** Most texts have none of the letters: that is found out faster than the pattern does. */
    private static boolean warns(String text) {
        return (text.contains("ANGER") || text.contains("anger") || text.contains("ARNING") || text.contains("arning")
                || text.contains("AUTION") || text.contains("aution") || text.contains("NOTICE")) && SIGNAL.matcher(text).find();
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getText() != null && warns(step.getText())) {
                findings.add(step, "The text of the step warns by itself: make a hazard of it, which stands before the step");
            }
        }
    }
}
