// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.benchlore.evidence.TestBook.ACTUATOR;
import static org.benchlore.evidence.TestBook.CAUSE;
import static org.benchlore.evidence.TestBook.NEW;
import static org.benchlore.evidence.TestBook.OLD;
import static org.benchlore.evidence.TestBook.PLATES;
import static org.benchlore.evidence.TestBook.TODAY;
import static org.benchlore.evidence.TestBook.part;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.store.KindFacts.Life;
import org.benchlore.store.KindFacts.PartFacts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as held, as failed and as neither. */
class EvidenceTest {

    private final TestBook book = new TestBook();

    private static Counts counted(int failed, int of) {
        return new Counts(failed, of, failed, of, 0, 0, 0, 0);
    }

    @Test
    void whatIsLeftInAndFollowedLongEnoughHeld() {
        book.job("a", "u1", "2026-03-01").left(ACTUATOR).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    /** Six months before 25 November is 25 May. */
    @ParameterizedTest
    @CsvSource({"2026-05-24, 1, 0", "2026-05-25, 1, 0", "2026-05-26, 0, 1"})
    void theLastDayOfFollowingCounts(String day, int held, int notFollowed) {
        book.job("a", "u1", day).left(ACTUATOR).add();
        assertEquals(new Counts(0, held, 0, held, notFollowed, 0, 0, 0), book.ask().left());
    }

    @Test
    void itIsFollowedFromTheDayItWasHandedBack() {
        book.job("a", "u1", "2026-05-01").closed("2026-06-10").left(ACTUATOR).add();
        assertEquals(1, book.ask().left().notFollowed());
    }

    @Test
    void aProposalThatNobodyConfirmedIsNoEvidence() {
        book.job("a", "u1", "2026-01-01").proposed(ACTUATOR).add();
        assertEquals(Counts.NONE, book.ask().left());
        assertFalse(book.ask().isKnown());
    }

    @Test
    void aJobThatIsNotHandedBackSaysNothingYet() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).open().add();
        assertEquals(Counts.NONE, book.ask(Question.of(ACTUATOR, TODAY).within(0)).left());
    }

    @Test
    void whatAComebackNamesFailedEvenIfFollowedShortly() {
        book.job("a", "u1", "2026-10-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-10-20").failed(ACTUATOR).add();
        assertEquals(counted(1, 1), book.ask().left());
    }

    @Test
    void theCauseNamesTheComponentWhereNoListDoes() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").cause(CAUSE).add();
        assertEquals(counted(1, 1), book.ask().left());
    }

    @Test
    void theListOutweighsTheCause() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").cause(CAUSE).failed(PLATES).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    /** The demonstration's lorry 17: felt good by hand, left in, teach-in failed, renewed in the second strip. */
    @Test
    void whatMustBeRenewedInASecondStripOfTheSameJobFailedAtOnce() {
        book.job("a", "u1", "2026-11-01").left(ACTUATOR).renew(PLATES).renewAgain(ACTUATOR, NEW).cause(CAUSE).add();
        assertEquals(counted(1, 1), book.ask().left());
        assertEquals(counted(1, 1), book.ask(Question.of(ACTUATOR, TODAY).within(0)).left());
    }

    @Test
    void whatIsRenewedWithItInASecondStripIsNotBlamed() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).left(PLATES).renewAgain(ACTUATOR).renewAgain(PLATES)
                .failed(PLATES).add();
        assertEquals(Counts.NONE, book.ask().left());
        assertEquals(counted(1, 1), book.ask(Question.of(PLATES, TODAY)).left());
    }

    @Test
    void theOnlyOneRenewedInASecondStripIsBlamedThoughTheCauseIsOfTheFirst() {
        book.job("a", "u1", "2026-01-01").left(PLATES).renewAgain(PLATES).cause(CAUSE).add();
        assertEquals(counted(1, 1), book.ask(Question.of(PLATES, TODAY)).left());
    }

    @Test
    void theOnlyOneRenewedInASecondStripIsNotBlamedWhereAnotherIsNamed() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).left(PLATES).renewAgain(ACTUATOR).failed(PLATES).add();
        assertEquals(Counts.NONE, book.ask().left());
    }

    @Test
    void aComebackForAPartLeftInThatNamesAnotherDoesNotBlameTheOnlyOne() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", "PART_LEFT_IN").failed(PLATES).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    @Test
    void aComebackForAPartLeftInBlamesTheOnlyOneThereWas() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", "PART_LEFT_IN").add();
        assertEquals(counted(1, 1), book.ask().left());
    }

    @Test
    void ofSeveralLeftInItBlamesTheOneThatWasThenRenewed() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).left(PLATES).add();
        book.job("b", "u1", "2026-02-01").renew(ACTUATOR).comebackOf("a", "PART_LEFT_IN").add();
        assertEquals(counted(1, 1), book.ask().left());
        assertEquals(counted(0, 1), book.ask(Question.of(PLATES, TODAY)).left());
    }

    @Test
    void ifBothWereRenewedNeitherIsBlamed() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).left(PLATES).add();
        book.job("b", "u1", "2026-02-01").renew(ACTUATOR).renew(PLATES).comebackOf("a", "PART_LEFT_IN").add();
        assertEquals(new Counts(0, 0, 0, 0, 1, 0, 0, 0), book.ask().left());
    }

    @ParameterizedTest
    @CsvSource({"UNRELATED", "SAME_FAULT", "OUR_WORK", "NOT_RECORDED"})
    void aComebackForAnotherReasonIsNotTheOldPart(String reason) {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", reason).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    @Test
    void aComebackOfAnotherJobDoesNotBlame() {
        book.job("z", "u1", "2025-12-01").add();
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").comebackOf("z", "PART_LEFT_IN").add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    @Test
    void failingAfterTheTimeOfFollowingIsHavingHeld() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-07-01").failed(ACTUATOR).add();
        assertEquals(counted(1, 1), book.ask().left());
        book.job("b", "u1", "2026-07-02").failed(ACTUATOR).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    @Test
    void forAShorterTimeOnlyWhatFailsWithinItCounts() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-04-01").failed(ACTUATOR).add();
        book.job("c", "u2", "2026-10-01").left(ACTUATOR).add();
        assertEquals(new Counts(1, 1, 1, 1, 1, 0, 0, 0), book.ask().left());
        assertEquals(counted(0, 2), book.ask(Question.of(ACTUATOR, TODAY).within(1)).left());
        assertEquals(counted(0, 2), book.ask(Question.of(ACTUATOR, TODAY).within(0)).left());
    }

    @Test
    void beyondTheTimeOfFollowingNothingIsClaimed() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        assertEquals(counted(0, 1), book.ask(Question.of(ACTUATOR, TODAY).within(120)).left());
    }

    @Test
    void renewingItForPrecautionEndsTheFollowing() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").renew(ACTUATOR).add();
        book.job("c", "u1", "2026-03-01").failed(ACTUATOR).add();
        assertEquals(new Counts(0, 0, 0, 0, 1, 0, 0, 0), book.ask().left());
        assertEquals(counted(1, 1), book.ask().renewed());
    }

    @Test
    void leavingItInAgainIsAnotherTry() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-08-01").left(ACTUATOR).add();
        book.job("c", "u1", "2026-09-01").failed(ACTUATOR).add();
        assertEquals(counted(1, 2), book.ask().left());
    }

    @Test
    void aUnitIsFollowedNoLongerThanItIsKept() {
        book.kept("u1", 2025).job("a", "u1", "2025-08-01").left(ACTUATOR).add();
        book.kept("u2", 2030).job("b", "u2", "2025-08-01").left(ACTUATOR).add();
        assertEquals(new Counts(0, 1, 0, 1, 1, 0, 0, 0), book.ask().left());
    }

    @Test
    void otherUnitsAreOtherUnits() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u2", "2026-02-01").failed(ACTUATOR).left(PLATES).add();
        assertEquals(counted(0, 1), book.ask().left());
    }

    @Test
    void renewingThatBroughtTroubleIsCounted() {
        book.job("a", "u1", "2026-01-01").renew(ACTUATOR, NEW).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", "NEW_PART_BAD").add();
        book.job("c", "u2", "2026-01-01").renew(ACTUATOR, NEW).add();
        book.job("d", "u3", "2026-01-01").renew(ACTUATOR, NEW).add();
        book.job("e", "u3", "2026-02-01").comebackOf("d", "UNRELATED").add();
        assertEquals(counted(1, 3), book.ask().renewed());
        assertEquals(new Estimate(0.05 + 1, 9.95 + 2), book.ask().trouble());
    }

    @Test
    void ofSeveralRenewedOnlyTheNamedOneIsBlamed() {
        book.job("a", "u1", "2026-01-01").renew(ACTUATOR).renew(PLATES).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", "OUR_WORK").add();
        assertEquals(counted(0, 1), book.ask().renewed());
        book.job("b", "u1", "2026-02-01").comebackOf("a", "OUR_WORK").failed(ACTUATOR).add();
        assertEquals(counted(1, 1), book.ask().renewed());
    }

    @Test
    void aComebackForAPartLeftInIsNoTroubleWithTheNewOne() {
        book.job("a", "u1", "2026-01-01").renew(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").comebackOf("a", "PART_LEFT_IN").failed(ACTUATOR).add();
        assertEquals(counted(0, 1), book.ask().renewed());
    }

    @Test
    void aNewPartThatMustBeRenewedAgainInTheSameJobIsTrouble() {
        book.job("a", "u1", "2026-01-01").renew(ACTUATOR, OLD).renewAgain(ACTUATOR, OLD).add();
        assertEquals(counted(1, 2), book.ask().renewed());
    }

    @Test
    void thePartInAUnitIsTheOneFittedOrReadLast() {
        book.job("a", "u1", "2026-01-01").renew(ACTUATOR, part("kit"), OLD).add();
        assertEquals(Optional.of(OLD), book.evidence().partIn(TestBook.unit("u1"), ACTUATOR));
        book.job("b", "u1", "2026-03-01").left(ACTUATOR, NEW).add();
        assertEquals(Optional.of(NEW), book.evidence().partIn(TestBook.unit("u1"), ACTUATOR));
        book.job("c", "u1", "2026-04-01").renew(ACTUATOR, part("x"), part("y")).add();
        assertEquals(Optional.empty(), book.evidence().partIn(TestBook.unit("u1"), ACTUATOR));
    }

    @Test
    void theNumberReadOnOnePartIsNotThatOfAnother() {
        book.job("a", "u1", "2026-01-01").left(PLATES, part("kit")).left(ACTUATOR, OLD).add();
        assertEquals(Optional.of(OLD), book.evidence().partIn(TestBook.unit("u1"), ACTUATOR));
    }

    @Test
    void lifeDataAreThoseOfThePart() {
        var life = new Life(new BigDecimal("2.5"), "4000 h");
        book.put(TestBook.row(Kind.PART, "old", "", Optional.empty(), Optional.empty(), List.of(), Set.of(),
                new PartFacts(Optional.empty(), Optional.of(life))));
        assertEquals(Optional.of(life), book.evidence().life(OLD));
        assertEquals(Optional.empty(), book.evidence().life(NEW));
    }

    @Test
    void evidenceFollowsTheNumberAndBreaksAtASupersession() {
        book.supersede(OLD, NEW);
        book.job("a", "u1", "2025-01-01").left(ACTUATOR, OLD).add();
        book.job("b", "u1", "2025-02-01").failed(ACTUATOR).renew(ACTUATOR, NEW).add();
        book.job("c", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("d", "u2", "2026-01-01").left(ACTUATOR).add();
        var question = Question.of(ACTUATOR, TODAY);
        assertEquals(new Counts(1, 1, 1, 1, 0, 0, 1, 1),
                book.ask(question.with(Optional.of(OLD), Optional.empty())).left());
        assertEquals(new Counts(0, 1, 0, 1, 0, 0, 1, 1),
                book.ask(question.with(Optional.of(NEW), Optional.empty())).left());
        assertEquals(counted(1, 3), book.ask(question).left());
        assertEquals(counted(0, 1), book.ask(question.with(Optional.empty(), Optional.of(NEW))).renewed());
        assertEquals(1, book.ask(question.with(Optional.empty(), Optional.of(OLD))).renewed().otherNumber());
    }

    @Test
    void aPartThatWasNeverSupersededNeedsNoNumber() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        var question = Question.of(ACTUATOR, TODAY).with(Optional.of(OLD), Optional.empty());
        assertEquals(counted(0, 1), book.ask(question).left());
    }

    @Test
    void otherMachinesOfTheFamilyCountAtTheirWeight() {
        book.machine("tipper", "HL", Map.of("actuator", List.of()));
        book.machine("hoist", "HL", Map.of("cylinder", List.of(OLD), "pump", List.of(part("p"))));
        book.machine("sweeper", "S", Map.of("actuator", List.of(OLD)));
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "t1", "2026-01-01").left(TestBook.component("tipper", "actuator")).add();
        book.job("c", "t1", "2026-02-01").failed(TestBook.component("tipper", "actuator")).add();
        book.job("d", "h1", "2026-01-01").left(TestBook.component("hoist", "cylinder")).add();
        book.job("e", "s1", "2026-01-01").left(TestBook.component("sweeper", "actuator")).add();
        assertEquals(new Counts(1, 3, 0.5, 2, 0, 0, 0, 0), book.ask().left());
        assertEquals(new Estimate(0.5 + 0.5, 0.5 + 1.5), book.ask().comeback());
    }

    @Test
    void aMachineWithoutAFamilyHasNone() {
        var lone = TestBook.component("lone", "actuator");
        book.machine("lone", "", Map.of("actuator", List.of(OLD)));
        book.machine("other", "", Map.of("actuator", List.of(OLD)));
        book.job("b", "t1", "2026-01-01").left(TestBook.component("other", "actuator")).add();
        assertEquals(Counts.NONE, book.ask(Question.of(lone, TODAY)).left());
    }

    @Test
    void lifeDataAreTheFigureBeforeTheJobs() {
        book.tally("note-2026-a", TODAY, "SEEN", TestBook.seen(1, 70, 2020));
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        var findings = book.ask(Question.of(ACTUATOR, TODAY).wearing(0.3));
        assertEquals(new Prior.Figure(0.3, true), findings.prior());
        assertTrue(findings.isKnown());
    }

    @Test
    void aChangedFileChangesTheCountsAndNothingElse() {
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        var evidence = book.evidence();
        var later = book.job("b", "u1", "2026-02-01").failed(ACTUATOR).left(ACTUATOR).row();
        evidence.change(later.path(), Optional.of(later));
        assertEquals(counted(1, 2), evidence.about(Question.of(ACTUATOR, TODAY), CountingRules.usual()).left());
        var harmless = book.job("b", "u1", "2026-02-01").row();
        evidence.change(later.path(), Optional.of(harmless));
        assertEquals(counted(0, 1), evidence.about(Question.of(ACTUATOR, TODAY), CountingRules.usual()).left());
        evidence.change("jobs/2020/job-2020-a.xmi", Optional.empty());
        assertEquals(Counts.NONE, evidence.about(Question.of(ACTUATOR, TODAY), CountingRules.usual()).left());
    }
}
