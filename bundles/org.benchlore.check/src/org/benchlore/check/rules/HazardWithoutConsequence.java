// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Hazard;

/** A hazard says what can happen. */
final class HazardWithoutConsequence extends ElementRule {

    HazardWithoutConsequence() {
        super(new About("hazard-without-consequence", Severity.ERROR,
                "A hazard says what can happen",
                "A warning that does not say what happens is not believed."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var hazard : subject.all(Hazard.class)) {
            if (Works.isBlank(hazard.getConsequence())) {
                findings.add(hazard, "The hazard '" + Works.shorten(hazard.getKind()) + "' does not say what can happen: write it");
            }
        }
    }
}
