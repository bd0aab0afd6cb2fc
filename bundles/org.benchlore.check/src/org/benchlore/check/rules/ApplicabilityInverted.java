// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Applicability;

/** Years and serial numbers run from the lower to the higher. */
final class ApplicabilityInverted extends ElementRule {

    ApplicabilityInverted() {
        super(new About("applicability-inverted", Severity.ERROR,
                "Years and serial numbers run from the lower to the higher",
                "It fits no machine at all, and nobody is shown it.",
                "Compares serial numbers of equal length only."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var one : subject.all(Applicability.class)) {
            if (one.getYearFrom() != null && one.getYearTo() != null && one.getYearFrom() > one.getYearTo()) {
                findings.add(one, "The years run from " + one.getYearFrom() + " to " + one.getYearTo() + ": turn them round");
            } else if (isInverted(one.getSerialFrom(), one.getSerialTo())) {
                findings.add(one, "The serial numbers run from " + one.getSerialFrom() + " to " + one.getSerialTo()
                        + ": turn them round");
            }
        }
    }

    private static boolean isInverted(String from, String to) {
        return from != null && to != null && from.length() == to.length() && from.compareTo(to) > 0;
    }
}
