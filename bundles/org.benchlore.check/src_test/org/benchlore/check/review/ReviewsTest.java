// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.check.review.Reviews.Standing;
import org.benchlore.check.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.model.compare.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure is reviewed by another person, and what changes afterwards is told in words. */
class ReviewsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Address ODA = new Address("shop.xmi", "oda-brekkan");
    private static final Address JORY = new Address("shop.xmi", "jory-pask");

    @TempDir
    Path folder;

    private EditSession session;
    private Procedure procedure;

    @BeforeEach
    void open() throws Exception {
        session = new DemoCopy(folder).sessions().open(DemoCopy.PROCEDURE);
        procedure = (Procedure) session.element();
    }

    private void tighten(String torque) {
        var fastening = procedure.getWays().get(0).getWork().getSteps().get(7).getFastenings().get(0);
        session.execute(session.edits().value(fastening.getStages().get(1), Literals.STAGE__TORQUE, Quantity.parse(torque)));
    }

    @Test
    void aDraftBecomesReviewedWithReviewerDayAndSum() {
        session.execute(Reviews.reopen(session));
        assertEquals(Standing.DRAFT, Reviews.standing(procedure));
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        assertEquals(Standing.AS_REVIEWED, Reviews.standing(procedure));
        assertEquals(DAY, procedure.getReviewedOn());
    }

    @Test
    void aReviewIsUndoneAsOne() {
        var before = procedure.getReviewedOn();
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        session.undo();
        assertEquals(before, procedure.getReviewedOn());
    }

    @Test
    void theRevisionGrowsOnlyWhereSomethingWasChanged() {
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        int first = procedure.getRevision();
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        assertEquals(first, procedure.getRevision());
        tighten("24 N·m");
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        assertEquals(first + 1, procedure.getRevision());
    }

    @Test
    void theAuthorCannotReview() {
        var refusal = assertThrows(IllegalArgumentException.class, () -> Reviews.review(session, JORY, DAY, List.of()));
        assertEquals("The author cannot review it: have somebody else do it", refusal.getMessage());
    }

    @Test
    void anErrorStandsAgainstAReview() {
        assertThrows(IllegalArgumentException.class, () -> Reviews.review(session, ODA, DAY, List.of("No torque is written")));
    }

    @Test
    void whatChangedSinceIsToldInWords() throws Exception {
        var copies = new ReviewedCopies(folder.resolve("reviewed"));
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        copies.keep(procedure);
        tighten("24 N·m");
        assertEquals(Standing.CHANGED_SINCE, Reviews.standing(procedure));
        assertEquals(List.of("tightening torque of stage 2, fastening Actuator to take-off, step 8, from 22 to 24 N·m"),
                copies.changes(procedure, new Words()));
    }

    @Test
    void theSumSurvivesSavingAndReading() throws Exception {
        session.execute(Reviews.review(session, ODA, DAY, List.of()));
        session.save();
        var read = (Procedure) session.library().top(procedure.getId()).orElseThrow();
        assertEquals(Standing.AS_REVIEWED, Reviews.standing(read));
    }

    @Test
    void aWithdrawalNeedsAReasonAndAFollowedSuccessor() {
        assertThrows(IllegalArgumentException.class, () -> Reviews.withdraw(session, " ", Optional.empty()));
        var own = new Address(session.path(), procedure.getId());
        assertThrows(IllegalArgumentException.class, () -> Reviews.withdraw(session, "Short rod.", Optional.of(own)));
        assertThrows(IllegalArgumentException.class, () -> Reviews.withdraw(session, "Short rod.", Optional.of(ODA)));
    }

    @Test
    void aWithdrawnProcedureNamesReasonAndSuccessorAndCanComeBack() {
        var successor = new Address("procedures/renew-pto-clutch-pack.xmi", "renew-pto-clutch-pack");
        session.execute(Reviews.withdraw(session, "Ends with a short rod.", Optional.of(successor)));
        assertEquals(Status.WITHDRAWN, procedure.getStatus());
        assertEquals("Ends with a short rod.", procedure.getWithdrawnReason());
        assertTrue(session.library().addressOf(procedure.getReplacedBy()).filter(successor::equals).isPresent());
        session.execute(Reviews.reopen(session));
        assertEquals(Standing.DRAFT, Reviews.standing(procedure));
    }
}
