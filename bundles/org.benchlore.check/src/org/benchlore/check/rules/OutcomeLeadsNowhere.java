// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Outcome;

/** Every outcome says what then. */
final class OutcomeLeadsNowhere extends ElementRule {

    OutcomeLeadsNowhere() {
        super(new About("outcome-leads-nowhere", Severity.ERROR,
                "Every outcome says what then",
                "Somebody finds it and stops, or goes on where he must not."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var outcome : subject.all(Outcome.class)) {
            if (Works.isBlank(outcome.getThen()) && outcome.getGoTo() == null) {
                findings.add(outcome, "The outcome '" + Works.shorten(outcome.getAnswer())
                        + "' does not say what then: write it, or name the "
                        + "step to go to");
            } else if (outcome.getGoTo() != null && !outcome.getGoTo().eIsProxy()
                    && outcome.getGoTo().eContainer() != outcome.eContainer().eContainer()) {
                findings.add(outcome, "The outcome '" + Works.shorten(outcome.getAnswer())
                        + "' leads to a step of another work: name a step "
                        + "of this one");
            }
        }
    }
}
