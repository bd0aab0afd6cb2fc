// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Findings;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.model.Qualification;
import org.benchlore.model.Work;

/** Asks for a qualification where the steps of a work speak of what needs it. */
record QualificationWords(Qualification qualification, Phrases phrases, String what) {

    static final String REACH = "Matches words of steps and conditions. Local rules decide who may do it; the rule only asks that it "
            + "was thought of.";

    void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (!work.getQualifications().contains(qualification) && isSpokenOf(subject, work)) {
                findings.add(work, "The work is on " + what + ", but no qualification for it is written: add it, so that nobody does "
                        + "it who may not");
            }
        }
    }

    private boolean isSpokenOf(Subject subject, Work work) {
        return work.getSteps().stream().anyMatch(step -> phrases.isIn(subject.text(step)))
                || work.getConditions().stream().anyMatch(condition -> phrases.isIn(subject.text(condition.getText())));
    }
}
