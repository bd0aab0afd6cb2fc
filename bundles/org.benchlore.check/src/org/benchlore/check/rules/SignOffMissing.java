// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.Work;
import org.benchlore.model.YesNo;

/** What is tightened on a safety-critical component is signed. */
final class SignOffMissing extends NeighbourRule {

    SignOffMissing() {
        super(new About("sign-off-missing", Severity.WARNING,
                "What is tightened on a safety-critical component is signed",
                "Nobody can say afterwards who tightened it."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        subject.procedure().filter(procedure -> isCritical(procedure.getComponent(), neighbours))
                .ifPresent(procedure -> subject.works().forEach(work -> report(work, findings)));
        for (var access : subject.all(Access.class)) {
            if (access.getRefit() != null && isCritical(access.getComponent(), neighbours)) {
                report(access.getRefit(), findings);
            }
        }
    }

    private static boolean isCritical(Component component, Neighbours neighbours) {
        return neighbours.follow(component, Component.class).filter(one -> one.getSafetyCritical() == YesNo.YES).isPresent();
    }

    private static void report(Work work, Findings findings) {
        work.getSteps().stream().filter(step -> !step.getFastenings().isEmpty() && !step.isSignOff())
                .forEach(step -> findings.add(step,
                "The step tightens a safety-critical component and is not signed: have it signed", "Have it signed",
                (session, element) -> session.edits().value(element, Literals.STEP__SIGN_OFF, true)));
    }
}
