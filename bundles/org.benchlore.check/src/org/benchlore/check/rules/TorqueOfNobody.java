// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.StatedBy;

/** It is written who states a torque. */
final class TorqueOfNobody extends ElementRule {

    TorqueOfNobody() {
        super(new About("torque-of-nobody", Severity.WARNING,
                "It is written who states a torque",
                "Nobody can tell whether the figure is the maker's, the shop's or worked out."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getStatedBy() == StatedBy.NOT_RECORDED && !Works.torques(fastening).isEmpty()) {
                findings.add(fastening, "Nobody is named for the torque of " + Works.name(fastening)
                        + ": say whether the maker or the shop states it");
            }
        }
    }
}
