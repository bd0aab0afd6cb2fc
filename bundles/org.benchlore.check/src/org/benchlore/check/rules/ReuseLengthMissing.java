// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.RenewRule;

/** Bolts used again by length say up to which length. */
final class ReuseLengthMissing extends ElementRule {

    ReuseLengthMissing() {
        super(new About("reuse-length-missing", Severity.ERROR,
                "Bolts used again by length say up to which length",
                "Without the length nobody can refuse a stretched bolt."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getRenew() == RenewRule.REUSE_WITHIN_LENGTH && fastening.getMaxLength() == null) {
                findings.add(fastening, "The bolts of " + Works.name(fastening)
                        + " are used again by length, but the length is missing: "
                        + "write it, or say that they are renewed");
            }
        }
    }
}
