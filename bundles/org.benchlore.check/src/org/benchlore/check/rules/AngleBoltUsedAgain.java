// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.RenewRule;

/** A bolt tightened by angle is renewed, or its length is measured. */
final class AngleBoltUsedAgain extends ElementRule {

    AngleBoltUsedAgain() {
        super(new About("angle-bolt-used-again", Severity.WARNING,
                "A bolt tightened by angle is renewed, or its length is measured",
                "A bolt that was stretched once can break the second time.",
                "Common practice, no source: some makers allow such bolts twice."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (Works.hasAngle(fastening) && fastening.getRenew() == RenewRule.REUSE) {
                findings.add(fastening, "The bolts of " + Works.name(fastening) + " are tightened by angle and used again: look up "
                        + "whether they must be renewed");
            }
        }
    }
}
