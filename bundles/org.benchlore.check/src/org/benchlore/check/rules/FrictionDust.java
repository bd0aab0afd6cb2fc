// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.TradeWords;

/** Cleaning friction linings forbids the air line. */
final class FrictionDust extends ElementRule {

    private final TradeWords words;

    FrictionDust(TradeWords words) {
        super(new About("friction-dust", Severity.ERROR,
                "Cleaning friction linings forbids the air line",
                "Dust of linings can hold fibres that harm the lungs; the air line spreads it through the "
                        + "hall.",
                "Matches words of the step: a cleaning word and a part with linings in one sentence. It does "
                        + "not know whether a clutch runs dry or in oil."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (Works.hazards(work).anyMatch(hazard -> words.forbidsAirLine(subject.text(hazard)))) {
                continue;
            }
            work.getSteps().stream().filter(step -> words.stirsUpFrictionDust(subject.text(step))).findFirst().ifPresent(step ->
                    findings.add(step, "The step stirs up the dust of linings, but no hazard says 'no air line': add it "
                            + "with how the dust is "
                            + "taken up"));
        }
    }
}
