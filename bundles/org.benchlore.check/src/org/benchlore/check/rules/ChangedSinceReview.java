// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.review.Reviews;
import org.benchlore.model.BookPackage.Literals;

/** A reviewed procedure reads as it was reviewed. */
final class ChangedSinceReview extends ElementRule {

    ChangedSinceReview() {
        super(new About("changed-since-review", Severity.ERROR,
                "A reviewed procedure reads as it was reviewed",
                "What is followed is not what was looked at.",
                "Only where the sum of the reviewed text was kept."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> Reviews.standing(procedure) == Reviews.Standing.CHANGED_SINCE)
                .ifPresent(procedure -> findings.add(procedure, "The text was changed since the review of " + procedure.getReviewedOn()
                        + ": have it reviewed again", "Make it a draft again", (session, element) ->
                                session.edits().value(element, Literals.PROCEDURE__STATUS, null)));
    }
}
