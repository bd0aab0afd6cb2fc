// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;

/** A fastening has a torque or an angle. */
final class FasteningWithoutTorque extends ElementRule {

    FasteningWithoutTorque() {
        super(new About("fastening-without-torque", Severity.ERROR,
                "A fastening has a torque or an angle",
                "Without a figure everybody tightens by feel."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            boolean isStated = fastening.getStages().stream().anyMatch(stage -> stage.getTorque() != null || stage.getAngle() != null);
            if (!isStated) {
                findings.add(fastening, "No tightening torque is written for " + Works.name(fastening)
                        + ": look it up and write it, with who states it");
            }
        }
    }
}
