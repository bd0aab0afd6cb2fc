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

/** Work on airbags and belt tensioners names the qualification. */
final class AirbagQualification extends ElementRule {

    private final QualificationWords asked = new QualificationWords(Qualification.AIRBAG,
            Phrases.exactly("airbag", "air bag", "belt tensioner", "pyrotechnic", "gas generator"),
            "airbags or belt tensioners");

    AirbagQualification() {
        super(new About("qualification-airbag", Severity.ERROR,
                "Work on airbags and belt tensioners names the qualification",
                "A charge that goes off in the hand maims; it counts as an explosive in many places.",
                "As said of words: it matches words of steps and conditions; local rules decide who may do "
                        + "it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        asked.check(subject, findings);
    }
}
