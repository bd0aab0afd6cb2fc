// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Text;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Step;
import org.benchlore.model.Work;

/** The support of a heavy part is named before its last bolt. */
final class SupportTooLate extends ElementRule {

    private final TradeWords words;

    SupportTooLate(TradeWords words) {
        super(new About("support-too-late", Severity.ERROR,
                "The support of a heavy part is named before its last bolt",
                "The part comes down on whoever turned out the last bolt.",
                "Asks only where a hazard speaks of a heavy part, of falling or of crushing; matches words "
                        + "for bolts coming out and for holding."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (!isHeavy(subject, work)) {
                continue;
            }
            for (var step : work.getSteps()) {
                if (says(subject, step)) {
                    break;
                }
                if (words.takesBoltsOut(subject.text(step)) && work.getSteps().stream().anyMatch(later -> says(subject, later))) {
                    findings.add(step, "The bolts come out here, but what holds the part is named only later: name it before");
                    break;
                }
            }
        }
    }

    private boolean isHeavy(Subject subject, Work work) {
        return Works.hazards(work).anyMatch(hazard -> words.isHeavy(subject.text(hazard)));
    }

    private boolean says(Subject subject, Step step) {
        return words.supports(subject.text(step))
                || step.getHazards().stream().anyMatch(hazard -> words.supports(Text.of(hazard.getAvoidance())));
    }
}
