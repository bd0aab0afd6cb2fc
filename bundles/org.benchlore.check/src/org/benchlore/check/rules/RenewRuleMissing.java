// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.RenewRule;

/** Every fastening says whether its bolts are used again. */
final class RenewRuleMissing extends ElementRule {

    RenewRuleMissing() {
        super(new About("renew-rule-missing", Severity.WARNING,
                "Every fastening says whether its bolts are used again",
                "Half the shop renews them, half does not."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getRenew() == RenewRule.NOT_RECORDED) {
                findings.add(fastening, "It is not written whether the bolts of " + Works.name(fastening) + " are used again: say so");
            }
        }
    }
}
