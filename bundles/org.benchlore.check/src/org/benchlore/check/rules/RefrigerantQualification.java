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

/** Work on refrigerant names the qualification. */
final class RefrigerantQualification extends ElementRule {

    private final QualificationWords asked = new QualificationWords(Qualification.REFRIGERANT,
            Phrases.exactly("refrigerant", "air conditioning gas", "recover the gas", "r134a", "r1234yf"),
            "refrigerant");

    RefrigerantQualification() {
        super(new About("qualification-refrigerant", Severity.ERROR,
                "Work on refrigerant names the qualification",
                "Refrigerant freezes skin and eyes, and letting it out is forbidden in many places.",
                "As said of words: it matches words of steps and conditions; local rules decide who may do "
                        + "it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        asked.check(subject, findings);
    }
}
