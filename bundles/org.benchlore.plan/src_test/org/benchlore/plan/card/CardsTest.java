// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.JobState;
import org.benchlore.model.RoundKind;
import org.benchlore.model.Verdict;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.card.CardLine.Begin;
import org.benchlore.plan.card.CardLine.Caution;
import org.benchlore.plan.card.CardLine.Task;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardsTest {

    private static final String PACK = "renew-pto-clutch-pack";
    private static final String OPENED = "pto-unit-opened";

    @TempDir
    Path folder;

    private CardBook at;

    @BeforeEach
    void open() throws Exception {
        at = new CardBook(folder);
    }

    @AfterEach
    void close() {
        at.close();
    }

    private List<String> ids(int round) {
        return at.tasks(round).stream().map(task -> task.part() + " " + task.place().id()).toList();
    }

    @Test
    void aRoundThatIsPlannedForNothingHasNoLines() {
        at.round(RoundKind.TEACH_IN_FAILED);
        assertEquals(Card.NONE, at.planned().get(0));
    }

    @Test
    void theCardRunsFromSavingThroughStripAndRefitToTheCodes() {
        at.round(RoundKind.STRIP, PACK);
        var ids = ids(0);
        assertEquals("BEFORE save-pto-values", ids.get(0));
        assertTrue(ids.indexOf("STRIP " + OPENED) < ids.indexOf("WORK " + PACK), ids::toString);
        assertTrue(ids.indexOf("WORK " + PACK) < ids.indexOf("REFIT " + OPENED), ids::toString);
        assertEquals("CLOSING read-codes", ids.get(ids.size() - 1));
    }

    @Test
    void hazardsStandBeforeTheLineTheyBelongTo() {
        at.round(RoundKind.STRIP, PACK);
        var lines = CardLines.of(at.library, at.planned().get(0), at.job.getRounds().get(0));
        assertTrue(lines.get(0) instanceof Begin && lines.get(1) instanceof Caution, lines::toString);
        assertTrue(lines.indexOf(lines.stream().filter(Task.class::isInstance).findFirst().orElseThrow()) > 1);
    }

    @Test
    void whatItAlwaysRenewsAndFitsComesWithTheLine() {
        at.round(RoundKind.STRIP, PACK);
        var work = at.tasks(0).stream().filter(task -> task.part() == Part.WORK).findFirst().orElseThrow();
        assertTrue(work.renewed().contains(CardBook.inMachine("pto-clutch-pack")), work::toString);
        assertTrue(work.fitted().contains(new Address("parts/pto-clutch-kit.xmi", "pto-clutch-kit")), work::toString);
    }

    @Test
    void tickingGoesThroughTheCardInItsOrder() {
        at.round(RoundKind.STRIP, PACK);
        assertEquals(Optional.of("Save what a strip of the take-off destroys"), at.next());
        at.tickUntil(0, OPENED);
        assertEquals(Optional.of("Open the clutch cover"), at.next());
        var progress = Progress.of(at.library, at.job, at.planned());
        assertTrue(progress.done() > 5 && progress.done() < progress.all(), progress::toString);
    }

    @Test
    void theCardOfARoundDoesNotChangeWhileItIsTicked() {
        at.round(RoundKind.STRIP, PACK);
        var before = ids(0);
        at.tickUntil(0, PACK);
        assertEquals(before, ids(0));
    }

    @Test
    void theNextRoundStartsFromWhereTheMachineStands() {
        at.round(RoundKind.STRIP, PACK);
        at.tickUntil(0, PACK);
        assertTrue(Standing.now(at.library, at.job).open().contains(OPENED));
        at.round(RoundKind.STRIP, PACK, "renew-pto-pack-filter");
        var ids = ids(1);
        assertFalse(ids.contains("STRIP " + OPENED), ids::toString);
        assertFalse(ids.contains("BEFORE save-pto-values"), ids::toString);
        assertTrue(ids.contains("REFIT " + OPENED) && ids.contains("WORK renew-pto-pack-filter"), ids::toString);
    }

    @Test
    void afterTheTeachInFailedItIsTaughtInOnceMore() {
        at.round(RoundKind.STRIP, PACK);
        at.tickUntil(0, "none");
        at.round(RoundKind.TEACH_IN_FAILED);
        assertEquals(List.of(), Standing.now(at.library, at.job).open());
        at.round(RoundKind.STRIP_AGAIN, "renew-pto-actuator");
        var ids = ids(2);
        assertFalse(ids.contains("WORK " + PACK) || ids.contains("BEFORE save-pto-values"), ids::toString);
        assertTrue(ids.contains("CLOSING teach-in-pto-engagement"), ids::toString);
    }

    @Test
    void aClosedJobAndAHandBackLeaveNothingOpen() {
        at.round(RoundKind.STRIP, PACK);
        at.tickUntil(0, PACK);
        at.job.setState(JobState.CLOSED);
        assertEquals(List.of(), Standing.now(at.library, at.job).open());
        at.job.setState(JobState.OPEN);
        at.round(RoundKind.HAND_BACK);
        assertEquals(List.of(), Standing.now(at.library, at.job).open());
    }

    @Test
    void whatIsDoneWithoutBeingPlannedStandsBelowThePlan() {
        at.round(RoundKind.STRIP, PACK);
        var done = BookFactory.eINSTANCE.createDoneWork();
        done.setProcedure(CardBook.procedure("renew-pto-pack-filter"));
        at.job.getRounds().get(0).getDone().add(done);
        var last = at.tasks(0).get(at.tasks(0).size() - 1);
        assertEquals("renew-pto-pack-filter", last.place().id());
    }

    @Test
    void whatCannotBePlannedIsSaidInOneSentence() {
        at.round(RoundKind.STRIP, "renew-sweeper-fan-bearings");
        assertTrue(at.planned().get(0).problem().orElseThrow().contains("is not for"), at.planned()::toString);
    }

    @Test
    void oldPartsInReachAreFoundUntilTheyAreRenewed() {
        at.round(RoundKind.STRIP, PACK);
        var found = InReach.of(at.library, at.job, at.planned());
        assertTrue(found.get(CardBook.inMachine("pto-actuator")).startsWith("In reach of '"), found::toString);
        assertFalse(found.containsKey(CardBook.inMachine("pto-clutch-pack")), found::toString);
        var done = BookFactory.eINSTANCE.createDoneWork();
        done.getRenewed().add((Component) CardBook.to(Literals.COMPONENT, CardBook.inMachine("pto-actuator")));
        at.job.getRounds().get(0).getDone().add(done);
        assertFalse(InReach.of(at.library, at.job, at.planned()).containsKey(CardBook.inMachine("pto-actuator")));
    }

    @Test
    void withNothingOpenedNothingIsInReach() {
        assertEquals(java.util.Map.of(), InReach.of(at.library, at.job, List.of()));
    }

    @Test
    void whatIsMissingIsSaidWithTheOpenMachineFirst() {
        at.round(RoundKind.STRIP, PACK);
        at.tickUntil(0, PACK);
        var missing = Missing.of(at.library, at.job, at.planned());
        assertTrue(missing.get(0).startsWith("Still open by the record: "), missing::toString);
        assertTrue(missing.stream().anyMatch(line -> line.startsWith("Not ticked: Renew the clutch pack")), missing::toString);
        assertTrue(missing.stream().anyMatch(line -> line.contains("how the work was proved")), missing::toString);
    }

    @Test
    void aValueOutOfLimitsIsMissedUntilALaterRoundMeasuresItAgain() {
        at.round(RoundKind.STRIP).getMeasured().add(measured("9.6 mm", Verdict.FAIL));
        assertTrue(Missing.of(at.library, at.job, List.of()).get(0).startsWith("Not within limits in round 1: "));
        at.round(RoundKind.VERIFY).getMeasured().add(measured("9.1 mm", Verdict.PASS));
        assertFalse(Missing.of(at.library, at.job, List.of()).get(0).startsWith("Not within limits"));
    }

    private static org.benchlore.model.MeasuredValue measured(String value, Verdict verdict) {
        var measured = BookFactory.eINSTANCE.createMeasuredValue();
        measured.setMeasurement((org.benchlore.model.Measurement) CardBook.to(Literals.MEASUREMENT,
                new Address("procedures/save-pto-values.xmi", "measure-touch-point-before")));
        measured.setValue(Quantity.parse(value));
        measured.setVerdict(verdict);
        return measured;
    }

    @Test
    void aFinishedJobMissesNothing() {
        at.job.setVerification("Ten engagements under load, no code");
        assertEquals(List.of(), Missing.of(at.library, at.job, List.of()));
    }
}
