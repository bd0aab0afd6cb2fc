// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.check.words.Text;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Work;

/** A heavy part that is unbolted has something that holds it. */
final class SupportMissing extends ElementRule {

    private final TradeWords words;

    private static final Phrases HEAVY = Phrases.exactly("heavy");

    SupportMissing(TradeWords words) {
        super(new About("support-missing", Severity.WARNING,
                "A heavy part that is unbolted has something that holds it",
                "What is not held falls.",
                "Matches the word 'heavy' in the kind of a hazard and words for holding anywhere in the "
                        + "work."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (Works.hazards(work).anyMatch(hazard -> HEAVY.isIn(Text.of(hazard.getKind()))) && !isHeld(subject, work)) {
                work.getSteps().stream().filter(step -> words.takesBoltsOut(subject.text(step))).findFirst()
                        .ifPresent(step -> findings.add(step,
                                "A hazard speaks of a heavy part, but nothing holds it when its bolts come out: "
                                + "name the sling, jack or stand"));
            }
        }
    }

    private boolean isHeld(Subject subject, Work work) {
        return work.getSteps().stream().anyMatch(step -> words.supports(subject.text(step)))
                || Works.hazards(work).anyMatch(hazard -> words.supports(Text.of(hazard.getAvoidance())));
    }
}
