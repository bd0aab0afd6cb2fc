// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;

/** A work has its usual time, or its procedure one for the whole job. */
final class MinutesMissing extends ElementRule {

    MinutesMissing() {
        super(new About("minutes-missing", Severity.WARNING,
                "A work has its usual time, or its procedure one for the whole job",
                "The plan counts nothing for it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        boolean isWhole = subject.procedure().filter(procedure -> procedure.getWholeJobUsual() != null).isPresent();
        for (var work : subject.works()) {
            if (!isWhole && work.getMinutesUsual() == null && !work.getSteps().isEmpty()) {
                findings.add(work, "No usual time is written: write the minutes it takes when nothing is seized");
            }
        }
    }
}
