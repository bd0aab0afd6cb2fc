// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.benchlore.page.TestBook.MAKE;
import static org.benchlore.page.TestBook.inner;
import static org.benchlore.page.TestBook.named;
import static org.benchlore.page.TestBook.to;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Fastening;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Hazard;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Recorded;
import org.benchlore.model.SequencePattern;
import org.benchlore.model.Signal;
import org.benchlore.model.StageKind;
import org.benchlore.model.StatedBy;
import org.benchlore.model.Status;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;
import org.benchlore.model.Work;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Numbered;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of a procedure. */
class ProcedurePageTest {

    @TempDir
    Path folder;

    private final Work work = inner(MAKE.createWork(), "work", "On the bench");
    private final Procedure procedure = procedure(work);

    private static Procedure procedure(Work work) {
        var procedure = named(MAKE.createProcedure(), "renew-pack", "Renew the pack");
        procedure.setKind(ProcedureKind.RENEW);
        procedure.setStatus(Status.REVIEWED);
        procedure.setRevision(4);
        var way = inner(MAKE.createWay(), "way", "Unit out");
        way.setWork(work);
        procedure.getWays().add(way);
        return procedure;
    }

    private Step step(String id, String text) {
        var step = MAKE.createStep();
        step.setId(id);
        step.setText(text);
        work.getSteps().add(step);
        return step;
    }

    private static Hazard hazard(Signal signal, String kind) {
        var hazard = MAKE.createHazard();
        hazard.setSignal(signal);
        hazard.setKind(kind);
        hazard.setConsequence("Injury");
        hazard.setAvoidance("Guard closed.");
        return hazard;
    }

    private void fastening(Step step) {
        var fastening = MAKE.createFastening();
        fastening.setPlace("Cover");
        fastening.setThread("M8");
        fastening.setCount(6);
        fastening.setStatedBy(StatedBy.CALCULATED);
        var first = MAKE.createStage();
        first.setKind(StageKind.TORQUE);
        first.setTorque(Quantity.parse("20 N·m"));
        var second = MAKE.createStage();
        second.setKind(StageKind.ANGLE);
        second.setAngle(Quantity.parse("90 °"));
        fastening.getStages().add(first);
        fastening.getStages().add(second);
        step.getFastenings().add(fastening);
    }

    @Test
    void limitsNameTheDocumentTheyComeFrom() {
        var document = named(MAKE.createDocument(), "bulletin-9", "Bulletin 9");
        var source = MAKE.createSource();
        source.setDocument(to(MAKE.createDocument(), "documents/bulletin-9.xmi", "bulletin-9"));
        source.setSection("page 2");
        source.setEdition("3");
        var measurement = MAKE.createMeasurement();
        measurement.setWhat("End play");
        measurement.setSource(source);
        step("step-a", "Measure.").getMeasurements().add(measurement);
        var text = new TestBook(folder).add(document).add(procedure).text("renew-pack").replaceAll("\\s+", " ");
        assertTrue(text.contains("source: Bulletin 9 [bulletin-9], edition 3, page 2"), text);
    }

    private String text() {
        return new TestBook(folder).add(procedure).text("renew-pack");
    }

    @Test
    void aProcedureReadsLikeThis() {
        work.setMinutesUsual(Quantity.parse("150 min"));
        work.setMinutesBad(Quantity.parse("230 min"));
        work.setConditionsRecorded(Recorded.NONE);
        work.setPartsRecorded(Recorded.LISTED);
        step("step-a", "Mark the plate.").setKind(StepKind.MARK);
        var press = step("step-b", "Press the plate down.");
        press.getHazards().add(hazard(Signal.WARNING, "Spring force"));
        press.setWhy("The ring is free only then.");
        var close = step("step-c", "Close the cover.");
        close.setSignOff(true);
        fastening(close);
        var outcome = MAKE.createOutcome();
        outcome.setAnswer("Gap left");
        outcome.setThen("Look again, see {step:step-a}.");
        outcome.setGoTo(press);
        close.getOutcomes().add(outcome);
        assertEquals(GOLDEN, text());
    }

    private static final String GOLDEN = """
            Renew the pack
            ==============

            Procedure:    renew-pack
            What is done: renew
            Revision:     4
            Status:       reviewed
            Skill:        not recorded

            Unit out
            --------

            Time:           150 min usually, 230 min when it goes badly
            People:         1
            Done by:        not recorded
            Qualifications: not recorded
            Machine states: not recorded

            Required conditions: none

            Hazards of the whole work: not recorded

            Tools: not recorded

            Parts: said to be listed, but the list is empty

            Supplies: not recorded

            Steps:

            1.  Mark: Mark the plate.

            +-- WARNING -------------------------------------------------------------------+
            | Spring force                                                                 |
            | Injury                                                                       |
            | Guard closed.                                                                |
            +------------------------------------------------------------------------------+
            2.  Press the plate down.
                Why: The ring is free only then.

            3.  Close the cover.
                Signed: ____________ Date: ____________
                - Tighten Cover, M8, 6 off: 20 N·m, then 90 °; whether they are used again:
                  not recorded; torque calculated, not the maker's
                - If “Gap left”: Look again, see step 1. – go to step 2

            Torque table:
            Step  Place  Thread  Count  Torque and stages  Used again    Stated by
            ----  -----  ------  -----  -----------------  ------------  -------------------
            3     Cover  M8      6      20 N·m, then 90 °  not recorded  calculated, not the
                                                                         maker's

            Closing conditions: not recorded

            Verification: not recorded

            *** CAUTION: Check against the manufacturer's data for this machine; local rules
                and a licensed person decide.""";

    @Test
    void aHazardStandsDirectlyBeforeItsStep() {
        step("step-a", "First.");
        step("step-b", "Second.").getHazards().add(hazard(Signal.DANGER, "Crushing"));
        var blocks = new TestBook(folder).add(procedure).page("renew-pack").blocks();
        var hazard = blocks.indexOf(new HazardPanel(Signal.DANGER, "Crushing", "Injury", "Guard closed."));
        assertEquals(new Numbered("2", "", Spans.of("Second."), false), blocks.get(hazard + 1));
    }

    @Test
    void hazardsOfTheWholeWorkStandBeforeTheFirstStep() {
        step("step-a", "First.");
        work.getHazards().add(hazard(Signal.CAUTION, "Heavy part"));
        var text = text();
        assertTrue(text.indexOf("Heavy part") < text.indexOf("1.  First."), text);
    }

    @ParameterizedTest
    @CsvSource({"NOT_RECORDED,not recorded", "NONE,none", "LISTED,'said to be listed, but the list is empty'"})
    void anEmptyListSaysWhetherItWasWrittenDown(Recorded recorded, String words) {
        work.setHazardsRecorded(recorded);
        assertTrue(text().contains("Hazards of the whole work: " + words + "\n"));
    }

    @Test
    void twoWaysAreNumberedApartAndALinkNamesTheOtherWork() {
        step("step-a", "First.");
        var other = inner(MAKE.createWork(), "work-2", "In the lorry");
        var step = MAKE.createStep();
        step.setId("step-z");
        step.setText("As {step:step-a}.");
        other.getSteps().add(step);
        var way = inner(MAKE.createWay(), "way-2", "Unit in");
        way.setWork(other);
        procedure.getWays().add(way);
        var text = text();
        assertTrue(text.contains("Way 2: Unit in\n"), text);
        assertTrue(text.contains("1.  As step 1 of On the bench."), text);
    }

    @Test
    void notesStandInOrderOfTrust() {
        var text = new TestBook(folder).add(procedure).add(note("note-2026-a", NoteStatus.RULED_OUT))
                .add(note("note-2026-b", NoteStatus.SUSPECTED)).add(note("note-2026-c", NoteStatus.HELD))
                .text("renew-pack");
        assertTrue(text.contains("""
                Field notes
                -----------

                - Text [note-2026-c], the fix held
                - Text [note-2026-b], suspected
                - Text [note-2026-a], looked like this, was not"""), text);
        assertFalse(text.contains("What refers to this"));
    }

    private static FieldNote note(String id, NoteStatus status) {
        var note = named(MAKE.createFieldNote(), id, "");
        note.setText("Text");
        note.setStatus(status);
        note.getDuring().add(to(MAKE.createProcedure(), "renew-pack"));
        return note;
    }

    @Test
    void hazardsThatStandAtTheStepsAreSaidToBeThere() {
        work.setHazardsRecorded(Recorded.LISTED);
        var press = step("step-b", "Press the plate down.");
        assertTrue(text().contains("said to be listed, but the list is empty"), text());
        press.getHazards().add(hazard(Signal.WARNING, "Spring force"));
        assertTrue(text().contains("Hazards of the whole work: none beside those at the steps"), text());
    }

    private Fastening circle(int count) {
        var fastening = MAKE.createFastening();
        fastening.setId("cover");
        fastening.setPlace("Clutch cover");
        fastening.setCount(count);
        fastening.setPattern(SequencePattern.CIRCLE);
        step("tighten", "Tighten.").getFastenings().add(fastening);
        return fastening;
    }

    private List<Block.Drawn> drawings() {
        return new TestBook(folder).add(procedure).page("renew-pack").blocks().stream().filter(Block.Drawn.class::isInstance)
                .map(Block.Drawn.class::cast).toList();
    }

    @Test
    void aCircleIsDrawnBelowItsStep() {
        circle(8);
        var drawing = drawings().get(0).drawing();
        assertEquals("Tightening sequence, Clutch cover, circle of 8", drawing.title());
        assertTrue(drawing.description().contains("1, 5, 3, 7, 2, 6, 4, 8"), drawing.description());
        assertTrue(drawing.description().contains("Loosen in the reverse order"), drawing.description());
        // After an angle once more round at full torque would stretch the bolts further.
        assertTrue(drawing.description().contains("a closing pass only if the stages say so"), drawing.description());
    }

    @Test
    void anOwnOrderIsDrawnAsWritten() {
        var fastening = circle(3);
        fastening.setPattern(SequencePattern.OWN_ORDER);
        fastening.setOrder("3 1 2");
        assertTrue(drawings().get(0).drawing().description().contains(": 3, 1, 2."));
    }

    @Test
    void whatGivesNoOrderIsNotDrawn() {
        var fastening = circle(2);
        assertTrue(drawings().isEmpty());
        fastening.setPattern(SequencePattern.OWN_ORDER);
        fastening.setOrder("1 1 2");
        assertTrue(drawings().isEmpty());
        fastening.setPattern(SequencePattern.RECTANGLE);
        fastening.setCount(8);
        assertTrue(drawings().isEmpty());
    }
}
