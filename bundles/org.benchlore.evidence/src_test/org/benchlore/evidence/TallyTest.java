// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import static org.benchlore.evidence.TestBook.ACTUATOR;
import static org.benchlore.evidence.TestBook.NEW;
import static org.benchlore.evidence.TestBook.OLD;
import static org.benchlore.evidence.TestBook.TODAY;
import static org.benchlore.evidence.TestBook.seen;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;

import org.benchlore.model.Kind;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.KindFacts.Sighting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a note's tally is worth, and that nothing is counted twice. */
class TallyTest {

    private static final LocalDate SAID = LocalDate.of(2025, 6, 30);

    private final TestBook book = new TestBook();

    @Test
    void aTallyIsWorthTheJobsTheShopSays() {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 70, 2019));
        var findings = book.ask();
        assertEquals(1 / 70.0, findings.comeback().chance(), 1e-12);
        assertEquals(10, findings.comeback().failed() + findings.comeback().sound(), 1e-12);
        assertEquals(1, findings.failed());
        assertEquals(70, findings.of());
        assertTrue(findings.isKnown());
    }

    @Test
    void aSmallTallyIsWorthNoMoreThanItsJobs() {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 4, 2019));
        assertEquals(new Estimate(1, 3), book.ask().comeback());
    }

    @Test
    void noneSeenIsHalfAOne() {
        book.tally("note-2025-a", SAID, "SEEN", seen(0, 9, 2019));
        assertEquals(0.05, book.ask().comeback().chance(), 1e-12);
    }

    @Test
    void moreSeenThanJobsIsEveryTime() {
        book.tally("note-2025-a", SAID, "SEEN", seen(9, 4, 2019));
        assertEquals(1, book.ask().comeback().chance(), 1e-8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"RULED_OUT", "SUPERSEDED"})
    void whatIsRuledOutOrSupersededSaysNothing(String status) {
        book.tally("note-2025-a", SAID, status, seen(1, 70, 2019));
        assertEquals(new Prior.Nothing(), book.ask().prior());
    }

    @Test
    void aTallyWithoutOfAboutIsNoFigure() {
        book.tally("note-2025-a", SAID, "SEEN", seen(4, 0, 2019));
        assertEquals(new Prior.Nothing(), book.ask().prior());
    }

    @Test
    void ofSeveralTalliesTheOneOverMostJobsCounts() {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 70, 2019));
        book.tally("note-2025-b", SAID, "SEEN", seen(5, 20, 2019));
        assertEquals(70, ((Prior.Tally) book.ask().prior()).ofAbout());
    }

    @Test
    void aNoteIsAboutTheComponentItGivesOrTheOneOfItsCause() {
        var tally = Optional.of(seen(1, 70, 2019));
        book.put(TestBook.row(Kind.NOTE, "note-2025-a", "SEEN", Optional.of(SAID), Optional.of(TestBook.CAUSE),
                java.util.List.of(ACTUATOR), java.util.Set.of(),
                new NoteFacts(Optional.empty(), Optional.of(TestBook.PLATES), Optional.empty(), tally)));
        assertEquals(new Prior.Nothing(), book.ask().prior());
        book.put(TestBook.row(Kind.NOTE, "note-2025-a", "SEEN", Optional.of(SAID), Optional.of(TestBook.CAUSE),
                java.util.List.of(ACTUATOR), java.util.Set.of(),
                new NoteFacts(Optional.empty(), Optional.empty(), Optional.empty(), tally)));
        assertEquals(1, ((Prior.Tally) book.ask().prior()).count());
    }

    /** The tally speaks for the jobs of its time: a record among them is the same job once more. */
    @ParameterizedTest
    @CsvSource({"2018-12-31, 1, 0", "2019-01-01, 0, 1", "2025-06-30, 0, 1", "2025-07-01, 1, 0"})
    void aJobOfTheTallysTimeIsCountedOnce(String day, int counted, int inTally) {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 70, 2019)).job("a", "u1", day).left(ACTUATOR).add();
        assertEquals(new Counts(0, counted, 0, counted, 0, inTally, 0, 0), book.ask().left());
    }

    /** The demonstration's note was written while the job was still in the shop. */
    @Test
    void theJobThatANoteBelongsToIsCountedOnceThoughItWasClosedLater() {
        var job = book.job("a", "u1", "2025-06-20").closed("2025-07-04").left(ACTUATOR).renewAgain(ACTUATOR).row();
        book.put(job).put(TestBook.row(Kind.NOTE, "note-2025-a", "SEEN", Optional.of(SAID), Optional.empty(),
                java.util.List.of(ACTUATOR), java.util.Set.of(), new NoteFacts(Optional.empty(), Optional.of(ACTUATOR),
                        Optional.of(job.address()), Optional.of(seen(3, 40, 2021)))));
        assertEquals(new Counts(0, 0, 0, 0, 0, 1, 0, 0), book.ask().left());
        assertEquals(3, book.ask().failed());
    }

    @Test
    void withoutAFirstYearItSpeaksForEverythingBefore() {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 70, 0)).job("a", "u1", "1999-01-01").left(ACTUATOR).add();
        assertEquals(1, book.ask().left().inTally());
    }

    @Test
    void withoutADayItSpeaksForEverythingUntilToday() {
        book.tally("note-2025-a", null, "SEEN", seen(1, 70, 0)).job("a", "u1", "2026-05-01").left(ACTUATOR).add();
        assertEquals(1, book.ask().left().inTally());
    }

    @Test
    void jobRecordsAsManyAsTheTallyTakeItsPlace() {
        book.tally("note-2025-a", SAID, "SEEN", seen(1, 2, 2019));
        book.job("a", "u1", "2024-01-01").left(ACTUATOR).add();
        assertEquals(1, book.ask().left().inTally());
        book.job("b", "u2", "2024-01-01").left(ACTUATOR).add();
        assertEquals(new Counts(0, 2, 0, 2, 0, 0, 0, 0), book.ask().left());
        assertEquals(new Prior.Nothing(), book.ask().prior());
    }

    @Test
    void recordsThatDoNotCountDoNotTakeItsPlace() {
        book.tally("note-2026-a", TODAY, "SEEN", seen(1, 1, 2019)).job("a", "u1", "2026-11-01").left(ACTUATOR).add();
        assertEquals(1, ((Prior.Tally) book.ask().prior()).ofAbout());
        assertEquals(1, book.ask().left().inTally());
    }

    @Test
    void aSightingAfterTheTallyThatHasAJobRecordIsCountedOnce() {
        var sighting = new Sighting(Optional.of(TestBook.unit("u1")), Optional.of(LocalDate.of(2026, 2, 3)));
        book.tally("note-2025-a", SAID, "SEEN", seen(2, 70, 2019, sighting));
        assertEquals(2, book.ask().failed());
        book.job("a", "u1", "2026-01-01").left(ACTUATOR).add();
        book.job("b", "u1", "2026-02-01").failed(ACTUATOR).add();
        var findings = book.ask();
        assertEquals(1, ((Prior.Tally) findings.prior()).count());
        assertEquals(1, findings.left().failed());
        assertEquals(2, findings.failed());
    }

    /** A month before it was opened and a month after it was handed back are still the same matter. */
    @ParameterizedTest
    @CsvSource({"2025-12-01, 2", "2025-12-02, 1", "2026-03-13, 1", "2026-03-14, 2"})
    void aSightingBelongsToAJobNearIt(String seenOn, int left) {
        var sighting = new Sighting(Optional.of(TestBook.unit("u1")), Optional.of(LocalDate.parse(seenOn)));
        book.tally("note-2025-a", SAID, "SEEN", seen(2, 70, 2019, sighting));
        book.job("a", "u1", "2026-01-02").closed("2026-02-10").renew(ACTUATOR).add();
        assertEquals(left, ((Prior.Tally) book.ask().prior()).count());
    }

    @Test
    void aSightingOfTheTallysOwnTimeStaysInIt() {
        var sighting = new Sighting(Optional.of(TestBook.unit("u1")), Optional.of(LocalDate.of(2025, 6, 30)));
        book.tally("note-2025-a", SAID, "SEEN", seen(2, 70, 2019, sighting));
        book.job("a", "u1", "2025-06-29").renew(ACTUATOR).add();
        assertEquals(2, ((Prior.Tally) book.ask().prior()).count());
    }

    @Test
    void aTallySpeaksForTheNumberBeforeABreak() {
        book.supersede(OLD, NEW).tally("note-2025-a", SAID, "SEEN", seen(3, 40, 2019));
        var question = Question.of(ACTUATOR, TODAY);
        assertEquals(40, book.ask(question.with(Optional.of(OLD), Optional.empty())).of());
        assertEquals(40, book.ask(question).of());
        assertEquals(0, book.ask(question.with(Optional.of(NEW), Optional.empty())).of());
    }
}
