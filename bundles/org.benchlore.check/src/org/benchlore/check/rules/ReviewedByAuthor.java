// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Status;

/** A procedure is reviewed by somebody who did not write it. */
final class ReviewedByAuthor extends NeighbourRule {

    ReviewedByAuthor() {
        super(new About("reviewed-by-author", Severity.ERROR,
                "A procedure is reviewed by somebody who did not write it",
                "Nobody sees his own mistake."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        subject.procedure().filter(procedure -> procedure.getStatus() == Status.REVIEWED && procedure.getReviewer() != null
                && neighbours.addressOf(procedure.getReviewer()).equals(neighbours.addressOf(procedure.getAuthor())))
                .ifPresent(procedure -> findings.add(procedure,
                        "Author and reviewer are the same person: have somebody else review it",
                        "Make it a draft again", (session, element) ->
                                session.edits().value(element, Literals.PROCEDURE__STATUS, null)));
    }
}
