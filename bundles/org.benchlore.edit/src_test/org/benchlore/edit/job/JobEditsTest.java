// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.ComebackReason;
import org.benchlore.model.JobState;
import org.benchlore.model.Offer;
import org.benchlore.model.Round;
import org.benchlore.model.RoundKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobEditsTest {

    private static final Address ACTUATOR = JobFixture.inMachine("pto-actuator");

    @TempDir
    Path folder;

    private JobFixture at;
    private JobEdits edits;

    @BeforeEach
    void open() throws Exception {
        at = new JobFixture(folder);
        edits = new JobEdits(at.session);
    }

    @AfterEach
    void close() {
        at.close();
    }

    @Test
    void roundsStandInTheirOrderWithIdsOfTheirOwnAndWhatTheyAreFor() {
        var second = (Round) edits.nextRound(RoundKind.TEACH_IN_FAILED, JobFixture.DAY.plusDays(3), List.of(), "Stops at 60 %").element();
        at.session.execute(edits.nextRound(RoundKind.STRIP_AGAIN, JobFixture.DAY.plusDays(4), List.of(JobFixture.PACK), "").edit());
        assertTrue(second.eContainer() == null, "an edit that was not done changes nothing");
        assertEquals(List.of(RoundKind.STRIP, RoundKind.STRIP_AGAIN), at.job.getRounds().stream().map(Round::getKind).toList());
        assertEquals(2, at.job.getRounds().stream().map(Round::getId).distinct().count());
        assertEquals(Optional.of(JobFixture.PACK), at.to(at.job.getRounds().get(1).getPlanned().get(0)));
    }

    @Test
    void aRoundIsUndone() {
        at.session.execute(edits.nextRound(RoundKind.VERIFY, JobFixture.DAY, List.of(), "").edit());
        at.session.undo();
        assertEquals(1, at.job.getRounds().size());
    }

    @Test
    void valuesToSaveAreProposedOnce() {
        var values = new LinkedHashMap<>(Map.of("Touch point", "9.1 mm"));
        at.session.execute(edits.save(values));
        values.put("Rest", "");
        at.session.execute(edits.save(values));
        assertEquals(List.of("Touch point 9.1 mm", "Rest null"),
                at.job.getSaved().stream().map(saved -> saved.getWhat() + " " + saved.getValue()).toList());
    }

    @Test
    void aPartLeftInIsProposedOnceAndConfirmedByAPerson() {
        at.session.execute(edits.leave(Map.of(ACTUATOR, "In reach")));
        at.session.execute(edits.leave(Map.of(ACTUATOR, "In reach")));
        assertEquals(1, at.job.getLeft().size());
        var left = at.job.getLeft().get(0);
        assertNull(left.getConfirmedBy());
        at.session.execute(edits.confirm(left, Optional.of(JobFixture.JORY)));
        assertEquals(Optional.of(JobFixture.JORY), at.to(left.getConfirmedBy()));
        at.session.execute(edits.confirm(left, Optional.empty()));
        assertNull(left.getConfirmedBy());
    }

    @Test
    void anOfferHoldsPriceAndTheAnswerWithWhoHowAndWhen() {
        var adding = edits.offer(Optional.of(JobFixture.PACK), "", "404.16", JobFixture.DAY);
        at.session.execute(adding.edit());
        var offer = (Offer) adding.element();
        assertEquals(Answer.OFFERED, offer.getAnswer());
        at.session.execute(edits.answer(offer, Answer.DECLINED, "Harbour office", "by telephone", JobFixture.DAY.plusDays(1)));
        assertEquals("DECLINED Harbour office by telephone 2026-11-26",
                offer.getAnswer() + " " + offer.getBy() + " " + offer.getHow() + " " + offer.getOn());
        at.session.undo();
        assertEquals(Answer.OFFERED, offer.getAnswer());
    }

    @Test
    void anOfferOfNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> edits.offer(Optional.empty(), " ", "", JobFixture.DAY));
    }

    @Test
    void aJobWaitsAndIsClosedOnADayAndOpenedAgain() {
        at.session.execute(edits.state(JobState.WAITING_FOR_PARTS));
        assertEquals(JobState.WAITING_FOR_PARTS, at.job.getState());
        at.session.execute(edits.close(JobFixture.DAY.plusDays(8)));
        assertEquals(JobState.CLOSED, at.job.getState());
        assertEquals(JobFixture.DAY.plusDays(8), at.job.getClosed());
        at.session.execute(edits.state(JobState.OPEN));
        assertNull(at.job.getClosed());
    }

    @Test
    void aJobIsNotClosedBeforeItBegan() {
        var day = JobFixture.DAY.minusDays(1);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> edits.close(day)).getMessage().contains("correct one"));
    }

    @Test
    void aJobIsNotClosedWithoutADay() {
        assertThrows(IllegalArgumentException.class, () -> edits.state(JobState.CLOSED));
    }

    @Test
    void aComebackNamesTheJobAndWhyAndOneThatIsNoneNeither() {
        var earlier = at.session.library().catalogue().rows(org.benchlore.model.Kind.JOB).findFirst().orElseThrow().address();
        at.session.execute(edits.comeback(Optional.of(earlier), ComebackReason.PART_LEFT_IN));
        assertEquals(Optional.of(earlier), at.to(at.job.getComebackOf()));
        assertEquals(ComebackReason.PART_LEFT_IN, at.job.getComebackReason());
        at.session.execute(edits.comeback(Optional.empty(), ComebackReason.PART_LEFT_IN));
        assertEquals(ComebackReason.NOT_RECORDED, at.job.getComebackReason());
    }
}
