// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;

/** Times were compared with real jobs within two years. */
final class MinutesStale extends ElementRule {

    private final LocalDate today;

    private static final int MOST = 24;

    MinutesStale(LocalDate today) {
        super(new About("minutes-stale", Severity.WARNING,
                "Times were compared with real jobs within two years",
                "Old times are promised to the customer and not kept.",
                "Two years are common practice, no source. Times without a date are passed over."));
        this.today = today;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            var checked = work.getMinutesCheckedOn();
            if (checked != null && checked.plusMonths(MOST).isBefore(today)) {
                findings.add(work, "The times were last compared with real jobs on " + checked + ": compare them again");
            }
        }
    }
}
