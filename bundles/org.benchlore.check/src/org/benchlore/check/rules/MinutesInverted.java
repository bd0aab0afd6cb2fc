// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.edit.Edits;
import org.benchlore.model.BookPackage.Literals;

/** The bad time is not shorter than the usual one. */
final class MinutesInverted extends ElementRule {

    MinutesInverted() {
        super(new About("minutes-inverted", Severity.ERROR,
                "The bad time is not shorter than the usual one",
                "The price promised is below what the work takes."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            if (work.getMinutesUsual() != null && work.getMinutesBad() != null
                    && work.getMinutesUsual().compareMagnitude(work.getMinutesBad()) > 0) {
                var usual = work.getMinutesUsual();
                var bad = work.getMinutesBad();
                findings.add(work, "The usual time " + usual + " is longer than the bad one " + bad + ": look at both",
                        "Turn the times round",
                        (session, element) -> Edits.all("turn the times round", List.of(
                                session.edits().value(element, Literals.WORK__MINUTES_USUAL, bad),
                                session.edits().value(element, Literals.WORK__MINUTES_BAD, usual))));
            }
        }
    }
}
