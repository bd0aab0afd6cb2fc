// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

import org.benchlore.check.DemoCopy;
import org.benchlore.check.review.Reviews.Standing;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.Status;
import org.benchlore.model.compare.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewKeeperTest {

    private static final Address ODA = new Address("shop.xmi", "oda-brekkan");

    @TempDir
    Path folder;

    private ReviewedCopies copies;
    private Sessions sessions;
    private EditSession session;

    /** The procedure says reviewed, without a sum, whatever the demonstration says. */
    @BeforeEach
    void open() throws Exception {
        copies = new ReviewedCopies(folder.resolve("kept"));
        sessions = new DemoCopy(folder).sessions();
        session = sessions.open(DemoCopy.PROCEDURE);
        session.execute(session.edits().value(session.element(), Literals.PROCEDURE__STATUS, Status.REVIEWED));
        session.execute(session.edits().value(session.element(), Literals.PROCEDURE__REVIEWED_HASH, null));
        session.save();
        ReviewKeeper.follow(sessions, copies);
    }

    private Procedure procedure() {
        return (Procedure) session.element();
    }

    private void say(String summary) {
        session.execute(session.edits().text(procedure(), Literals.PROCEDURE__SUMMARY, summary));
    }

    @Test
    void aReviewIsKeptWhenItIsSavedAndNotBefore() throws Exception {
        session.execute(Reviews.review(session, ODA, LocalDate.of(2026, 11, 25), List.of()));
        assertTrue(copies.of(procedure()).isEmpty());
        session.save();
        say("Half an hour.");
        assertEquals(1, copies.changes(procedure(), new Words()).size());
    }

    @Test
    void whatWasReviewedElsewhereIsKeptBeforeItIsEdited() throws Exception {
        session.execute(Reviews.keepSum(session));
        session.save();
        session.close();
        for (var file : Files.list(folder.resolve("kept")).toList()) {
            Files.delete(file);
        }
        session = sessions.open(DemoCopy.PROCEDURE);
        say("Half an hour.");
        assertEquals(1, copies.changes(procedure(), new Words()).size());
    }

    @Test
    void aChangedProcedureIsNotKeptAsReviewed() throws Exception {
        session.execute(Reviews.keepSum(session));
        say("Half an hour.");
        session.save();
        assertEquals(Standing.CHANGED_SINCE, Reviews.standing(procedure()));
        assertTrue(copies.of(procedure()).isEmpty());
    }

    @Test
    void aSumIsKeptOnceAndNotForWhatWasChanged() throws Exception {
        session.execute(Reviews.keepSum(session));
        assertEquals(Standing.AS_REVIEWED, Reviews.standing(procedure()));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Reviews.keepSum(session)).getMessage()
                .contains("needs no sum"));
        say("Half an hour.");
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Reviews.keepSum(session)).getMessage()
                .contains("have it reviewed again"));
    }
}
