// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;

/** A step that asks something says what each answer means. */
final class QuestionWithoutAnswers extends ElementRule {

    QuestionWithoutAnswers() {
        super(new About("question-without-answers", Severity.WARNING,
                "A step that asks something says what each answer means",
                "The apprentice looks, sees something, and does not know whether it matters."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var step : subject.all(Step.class)) {
            if (step.getOutcomes().isEmpty() && step.getKind() != StepKind.DECIDE && Works.plain(step.getText()).contains("?")) {
                findings.add(step, "The step asks a question, but no answer stands with it: add what may be found and what then");
            }
        }
    }
}
