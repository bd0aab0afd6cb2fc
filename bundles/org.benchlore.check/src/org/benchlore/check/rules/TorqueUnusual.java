// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.torque.Place;

/** A torque is as high as is usual for its bolt. */
final class TorqueUnusual extends ElementRule {

    private final Judgement.Known known;

    TorqueUnusual(Judgement.Known known) {
        super(new About("torque-unusual", Severity.WARNING,
                "A torque is as high as is usual for its bolt",
                "A loose bolt works itself free; a high snug torque leaves nothing for the angle.",
                "As the rule on implausible torques."));
        this.known = known;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            known.of(fastening).verdict()
                    .filter(verdict -> !verdict.isSlip() && (verdict.place() == Place.BELOW || verdict.place() == Place.HIGH_FOR_SNUG))
                    .ifPresent(verdict -> findings.add(fastening, verdict.judged() + " at " + Works.name(fastening) + " is "
                            + verdict.words() + " for " + Judgement.bolt(fastening)
                            + ": compare it with the source; a gasket or a soft "
                            + "thread may be the reason"));
        }
    }
}
