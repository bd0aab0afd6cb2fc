// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Hazard;
import org.benchlore.model.Signal;

/** A hazard has its signal word. */
final class HazardWithoutSignal extends ElementRule {

    HazardWithoutSignal() {
        super(new About("hazard-without-signal", Severity.WARNING,
                "A hazard has its signal word",
                "DANGER, WARNING and CAUTION tell death from a scratch (ANSI Z535.6)."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var hazard : subject.all(Hazard.class)) {
            if (hazard.getSignal() == Signal.NOT_RECORDED) {
                findings.add(hazard, "The hazard '" + Works.shorten(hazard.getKind())
                        + "' has no signal word: choose DANGER, WARNING, "
                        + "CAUTION or NOTICE by what can happen");
            }
        }
    }
}
