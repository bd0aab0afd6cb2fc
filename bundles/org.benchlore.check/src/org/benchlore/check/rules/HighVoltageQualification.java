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

/** Work on high voltage names the qualification. */
final class HighVoltageQualification extends ElementRule {

    private final QualificationWords asked = new QualificationWords(Qualification.HIGH_VOLTAGE,
            Phrases.exactly("high voltage", "high voltage battery", "traction battery", "orange cable", "hv battery",
            "service disconnect"),
            "high voltage");

    HighVoltageQualification() {
        super(new About("qualification-high-voltage", Severity.ERROR,
                "Work on high voltage names the qualification",
                "High voltage kills at the first touch; who may work on it is ruled by law in most places.",
                "As said of words: it matches words of steps and conditions; local rules decide who may do "
                        + "it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        asked.check(subject, findings);
    }
}
