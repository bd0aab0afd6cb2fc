// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.StatedBy;

/** A worked-out torque is never the one to tighten to. */
final class ComputedTorqueStated extends ElementRule {

    ComputedTorqueStated() {
        super(new About("computed-torque-stated", Severity.ERROR,
                "A worked-out torque is never the one to tighten to",
                "A worked-out figure knows nothing of the female thread, the gasket and the maker's tests."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getStatedBy() == StatedBy.CALCULATED) {
                findings.add(fastening, "The torque of " + Works.name(fastening)
                        + " is worked out, not the maker's: look the maker's up "
                        + "and write who states it");
            }
        }
    }
}
