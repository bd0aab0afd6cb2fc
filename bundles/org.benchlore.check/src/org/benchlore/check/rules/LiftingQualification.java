// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.model.Qualification;
import org.benchlore.model.Work;

/** Work with a lift, crane or hoist names the qualification. */
final class LiftingQualification extends ElementRule {

    private final QualificationWords asked = new QualificationWords(Qualification.LIFTING,
            Phrases.exactly("column", "column lift", "crane", "forklift", "fork lift", "chain block", "hoist",
            "lift the lorry", "lift the vehicle", "lift the machine", "raise the vehicle", "raise the lorry"),
            "lifting with a lift, crane or hoist");

    LiftingQualification() {
        super(new About("qualification-lifting", Severity.ERROR,
                "Work with a lift, crane or hoist names the qualification",
                "What is lifted wrongly comes down on somebody.",
                "As said of words: it matches words of steps and conditions; local rules decide who may do "
                        + "it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        asked.check(subject, findings);
    }
}
