// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Hazard;

/** A hazard says how it is avoided. */
final class HazardWithoutAvoidance extends ElementRule {

    HazardWithoutAvoidance() {
        super(new About("hazard-without-avoidance", Severity.ERROR,
                "A hazard says how it is avoided",
                "A warning that does not say what to do helps nobody."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var hazard : subject.all(Hazard.class)) {
            if (Works.isBlank(hazard.getAvoidance())) {
                findings.add(hazard, "The hazard '" + Works.shorten(hazard.getKind()) + "' does not say how to avoid it: write it");
            }
        }
    }
}
