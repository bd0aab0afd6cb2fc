// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.benchlore.check.Report;
import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.store.Library;

/** Review and withdrawal of procedures, as edits that can be undone. Refusals are plain sentences. */
public final class Reviews {

    /** Where a procedure stands. */
    public enum Standing {
        /** Nobody has reviewed it. */
        DRAFT,
        /** It reads as it was reviewed. */
        AS_REVIEWED,
        /** It says reviewed, but no sum of the reviewed text was kept: nobody can tell whether it was changed. */
        REVIEWED_WITHOUT_SUM,
        /** It was changed since. */
        CHANGED_SINCE,
        /** It is not to be followed any more. */
        WITHDRAWN
    }

    /** Rules about the review itself, which it mends. */
    private static final Set<String> MENDED = Set.of("changed-since-review", "review-incomplete", "reviewed-by-author");

    private Reviews() {
    }

    /**
     * Leaves out what is mended by a review.
     *
     * @param report what the rules find in a procedure
     * @return what is left for a reviewer to look at
     */
    public static Report leftFor(Report report) {
        return new Report(report.open().stream().filter(problem -> !MENDED.contains(problem.rule())).toList(),
                report.silenced(), report.files());
    }

    /** Says where a procedure stands. */
    public static Standing standing(Procedure procedure) {
        return switch (procedure.getStatus()) {
            case DRAFT -> Standing.DRAFT;
            case WITHDRAWN -> Standing.WITHDRAWN;
            case REVIEWED -> isBlank(procedure.getReviewedHash()) ? Standing.REVIEWED_WITHOUT_SUM
                    : procedure.getReviewedHash().equals(ReviewedText.sum(procedure)) ? Standing.AS_REVIEWED
                            : Standing.CHANGED_SINCE;
        };
    }

    /**
     * Says what stands against a review.
     *
     * @param session the session of a procedure
     * @param reviewer who reviews it
     * @param errors sentences of the errors found in the working copy and not suppressed
     * @return sentences; empty if it may be reviewed
     */
    public static List<String> obstacles(EditSession session, Address reviewer, List<String> errors) {
        return obstacles(session.library(), procedure(session), reviewer, errors);
    }

    /**
     * Says what stands against a review.
     *
     * @param library the library of the procedure
     * @param procedure the procedure as it is to be reviewed
     * @param reviewer who reviews it
     * @param errors sentences of the errors found in it and not suppressed
     * @return sentences; empty if it may be reviewed
     */
    public static List<String> obstacles(Library library, Procedure procedure, Address reviewer, List<String> errors) {
        var found = new ArrayList<String>();
        var author = library.addressOf(procedure.getAuthor());
        if (author.isEmpty()) {
            found.add("Nobody is named as author: name who wrote it");
        } else if (author.get().equals(reviewer)) {
            found.add("The author cannot review it: have somebody else do it");
        }
        if (procedure.getStatus() == Status.WITHDRAWN) {
            found.add("It is withdrawn: make it a draft again first");
        }
        found.addAll(errors);
        return found;
    }

    /**
     * Marks a procedure as reviewed. The revision grows by one where something was changed since the last review.
     *
     * @param session the session of a procedure
     * @param reviewer where the reviewer stands in the shop
     * @param day the day of the review
     * @param errors sentences of the errors found in the working copy and not suppressed
     * @return the edit
     * @throws IllegalArgumentException with what stands against it
     */
    public static Edit review(EditSession session, Address reviewer, LocalDate day, List<String> errors) {
        var obstacles = obstacles(session, reviewer, errors);
        if (!obstacles.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", obstacles));
        }
        var procedure = procedure(session);
        var edits = session.edits();
        var sum = ReviewedText.sum(procedure);
        return Edits.all("review", List.of(edits.value(procedure, Literals.PROCEDURE__STATUS, Status.REVIEWED),
                edits.reference(procedure, Literals.PROCEDURE__REVIEWER, Optional.of(reviewer)),
                edits.value(procedure, Literals.PROCEDURE__REVIEWED_ON, day),
                edits.value(procedure, Literals.PROCEDURE__REVIEWED_HASH, sum),
                edits.value(procedure, Literals.PROCEDURE__REVISION, revision(procedure, sum))));
    }

    private static Integer revision(Procedure procedure, String sum) {
        int now = procedure.getRevision() == null ? 0 : procedure.getRevision();
        boolean isFirst = procedure.getReviewedOn() == null;
        return Objects.equals(sum, procedure.getReviewedHash()) || isFirst && now > 0 ? Integer.valueOf(now)
                : Integer.valueOf(now + 1);
    }

    /**
     * Keeps the sum of a procedure that was reviewed before sums were kept, or elsewhere: from now on a change is seen.
     *
     * @param session the session of a procedure
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if it is not one that was reviewed without a sum
     */
    public static Edit keepSum(EditSession session) {
        var procedure = procedure(session);
        if (standing(procedure) != Standing.REVIEWED_WITHOUT_SUM) {
            throw new IllegalArgumentException(standing(procedure) == Standing.CHANGED_SINCE
                    ? "'" + session.title() + "' was changed since its review: have it reviewed again"
                    : "'" + session.title() + "' needs no sum: only what is reviewed and has none is given one");
        }
        var sum = ReviewedText.sum(procedure);
        return Edits.all("keep the sum of the reviewed text",
                List.of(session.edits().value(procedure, Literals.PROCEDURE__REVIEWED_HASH, sum)));
    }

    /** Makes a procedure a draft again. What was reviewed last stays known, so that the next reviewer sees what changed. */
    public static Edit reopen(EditSession session) {
        var procedure = procedure(session);
        return Edits.all("make a draft again", List.of(session.edits().value(procedure, Literals.PROCEDURE__STATUS, null),
                session.edits().value(procedure, Literals.PROCEDURE__WITHDRAWN_REASON, null),
                session.edits().reference(procedure, Literals.PROCEDURE__REPLACED_BY, Optional.empty())));
    }

    /**
     * Withdraws a procedure.
     *
     * @param session the session of a procedure
     * @param reason why
     * @param successor the procedure to follow instead, if there is one
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if there is no reason or the successor will not do
     */
    public static Edit withdraw(EditSession session, String reason, Optional<Address> successor) {
        if (isBlank(reason)) {
            throw new IllegalArgumentException("A procedure is withdrawn for a reason: write it");
        }
        successor.ifPresent(address -> refuse(session, address));
        var procedure = procedure(session);
        return Edits.all("withdraw", List.of(session.edits().value(procedure, Literals.PROCEDURE__STATUS, Status.WITHDRAWN),
                session.edits().text(procedure, Literals.PROCEDURE__WITHDRAWN_REASON, reason),
                session.edits().reference(procedure, Literals.PROCEDURE__REPLACED_BY, successor)));
    }

    private static void refuse(EditSession session, Address successor) {
        var row = session.library().catalogue().at(successor).filter(found -> found.kind() == Kind.PROCEDURE)
                .orElseThrow(() -> new IllegalArgumentException(successor + " is no procedure of this library: name another"));
        if (row.path().equals(session.path())) {
            throw new IllegalArgumentException("A procedure cannot replace itself: name another");
        }
        if (row.status().equals(Status.WITHDRAWN.getLiteral())) {
            throw new IllegalArgumentException("'" + row.title() + "' is withdrawn itself: name one that is followed");
        }
    }

    private static Procedure procedure(EditSession session) {
        if (session.element() instanceof Procedure procedure) {
            return procedure;
        }
        throw new IllegalArgumentException(session.title() + " is no procedure: only procedures are reviewed");
    }

    private static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }
}
