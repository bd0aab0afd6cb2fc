// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Status;

/** A reviewed procedure names author, reviewer and day. */
final class ReviewIncomplete extends ElementRule {

    ReviewIncomplete() {
        super(new About("review-incomplete", Severity.ERROR,
                "A reviewed procedure names author, reviewer and day",
                "Nobody answers for it.",
                "A shop that is named in their place counts too, as packs without names bring it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getStatus() == Status.REVIEWED).ifPresent(procedure -> {
            var missing = new ArrayList<String>();
            // A pack from another shop may name no people; then the shop answers for it.
            boolean isFromElsewhere = procedure.getReviewedIn() != null;
            if (procedure.getAuthor() == null && !isFromElsewhere) {
                missing.add("author");
            }
            if (procedure.getReviewer() == null && !isFromElsewhere) {
                missing.add("reviewer");
            }
            if (procedure.getReviewedOn() == null) {
                missing.add("day of the review");
            }
            if (!missing.isEmpty()) {
                findings.add(procedure, "The procedure says reviewed, but has no " + String.join(", no ", missing)
                        + ": review it again",
                        "Make it a draft again", (session, element) ->
                                session.edits().value(element, Literals.PROCEDURE__STATUS, null));
            }
        });
    }
}
