// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.function.Predicate;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.check.words.TradeWords;
import org.benchlore.edit.InnerEdits;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Hazard;
import org.benchlore.model.Step;
import org.benchlore.model.Work;

/** A hazard stands before the first step that brings it. */
final class HazardAfterStep extends ElementRule {

    private final TradeWords words;

    private static final Phrases PRESSURE = Phrases.exactly("pressure", "under pressure", "goes through the skin");

    HazardAfterStep(TradeWords words) {
        super(new About("hazard-after-step", Severity.ERROR,
                "A hazard stands before the first step that brings it",
                "A warning that comes after the union is open comes too late.",
                "Knows one pair by words: a line that is opened, and pressure."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (work.getHazards().stream().anyMatch(hazard -> isPressure(subject, hazard))) {
                continue;
            }
            int opened = first(work, step -> words.opensLine(subject.text(step)));
            int warned = first(work, step -> step.getHazards().stream().anyMatch(hazard -> isPressure(subject, hazard)));
            if (opened >= 0 && warned > opened) {
                var hazard = work.getSteps().get(warned).getHazards().stream().filter(one -> isPressure(subject, one))
                        .findFirst().orElseThrow();
                var target = work.getSteps().get(opened).getId();
                findings.add(hazard, "The hazard '" + Works.shorten(hazard.getKind()) + "' stands at step " + (warned + 1)
                        + ", but step " + (opened + 1) + " opens the line already: move it there", "Move it to step " + (opened + 1),
                        (session, element) -> session.edits().inner().moveTo(element, session.element().eResource().getEObject(target),
                                Literals.STEP__HAZARDS, InnerEdits.END));
            }
        }
    }

    private static boolean isPressure(Subject subject, Hazard hazard) {
        return PRESSURE.isIn(subject.text(hazard));
    }

    private static int first(Work work, Predicate<Step> wanted) {
        for (int i = 0; i < work.getSteps().size(); i++) {
            if (wanted.test(work.getSteps().get(i))) {
                return i;
            }
        }
        return -1;
    }
}
