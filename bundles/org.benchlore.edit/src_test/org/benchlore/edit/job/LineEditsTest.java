// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Measurement;
import org.benchlore.model.Verdict;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LineEditsTest {

    private static final Ticked PACK = new Ticked.Done(JobFixture.PACK, 0);
    private static final Ticked OPENED = new Ticked.Opened(JobFixture.inMachine("pto-unit-opened"), 0);
    private static final Address MEASUREMENT = new Address("procedures/save-pto-values.xmi", "measure-touch-point-before");
    private static final Address FASTENING = new Address(JobFixture.PACK.path(), "fastening-cover");

    @TempDir
    Path folder;

    private JobFixture at;
    private LineEdits lines;

    @BeforeEach
    void open() throws Exception {
        at = new JobFixture(folder);
        lines = new LineEdits(at.session);
    }

    @AfterEach
    void close() {
        at.close();
    }

    private void tick(Ticked line, String minutes) {
        at.session.execute(lines.tick(at.round, line, Doing.of(minutes, "2", Optional.of(JobFixture.JORY))));
    }

    @Test
    void aTickHoldsTimePeopleAndWho() {
        tick(PACK, "95");
        var done = at.recorded().done(at.round, PACK).orElseThrow();
        assertEquals("95 min", done.getMinutes().toString());
        assertEquals(2, done.getPeople());
        assertEquals(Optional.of(JobFixture.JORY), at.to(done.getBy()));
    }

    @Test
    void aTickIsUndoneWhole() {
        tick(OPENED, "30");
        at.session.undo();
        assertTrue(at.round.getDone().isEmpty() && at.round.getOpened().isEmpty());
    }

    @Test
    void aSecondTickChangesTheFirst() {
        tick(PACK, "95");
        tick(PACK, "1 h 50 min");
        assertEquals(1, at.round.getDone().size());
        assertEquals("1 h 50 min", at.round.getDone().get(0).getMinutes().toString());
    }

    @Test
    void theSameLineASecondTimeIsAnEntryOfItsOwn() {
        tick(OPENED, "30");
        var again = new Ticked.Opened(OPENED.address(), 1);
        tick(again, "12");
        assertEquals(List.of("30 min", "12 min"), at.round.getDone().stream().map(done -> done.getMinutes().toString()).toList());
        assertEquals(1, at.round.getOpened().size());
    }

    @Test
    void anOpenedAccessStandsAmongThoseTheRoundOpened() {
        tick(OPENED, "30");
        assertEquals(List.of(OPENED.address()), at.round.getOpened().stream().map(access -> at.to(access).orElseThrow()).toList());
    }

    @Test
    void aTickTakenBackTakesTheOpenedAccessAlong() {
        tick(OPENED, "30");
        at.session.execute(lines.untick(at.round, OPENED));
        assertTrue(at.round.getDone().isEmpty() && at.round.getOpened().isEmpty());
    }

    @Test
    void whatIsNotTimeIsRefusedAndNothingIsWritten() {
        assertThrows(IllegalArgumentException.class, () -> tick(PACK, "3 bar"));
        assertTrue(at.round.getDone().isEmpty());
    }

    @Test
    void whatWasRenewedAndFittedStandsWithTheTick() {
        var plates = JobFixture.inMachine("pto-clutch-pack");
        var kit = new Address("parts/pto-clutch-kit.xmi", "pto-clutch-kit");
        at.session.execute(lines.tick(at.round, PACK, new Doing("", "", Optional.empty(), List.of(plates), List.of(kit))));
        var done = at.round.getDone().get(0);
        assertEquals(Optional.of(plates), at.to(done.getRenewed().get(0)));
        assertEquals(Optional.of(kit), at.to(done.getFitted().get(0)));
    }

    private static Measurement asked() {
        var asked = BookFactory.eINSTANCE.createMeasurement();
        asked.setHigh(Quantity.parse("9.5 mm"));
        return asked;
    }

    private void measure(String typed) {
        at.session.execute(lines.measured(at.round, MEASUREMENT, asked(), typed, Optional.of(JobFixture.JORY)));
    }

    @Test
    void aMeasuredValueBringsItsVerdict() {
        measure("9.6 mm");
        assertEquals(Verdict.FAIL, at.recorded().measured(at.round, MEASUREMENT).orElseThrow().getVerdict());
        measure("9.1 mm");
        assertEquals(1, at.round.getMeasured().size());
        assertEquals(Verdict.PASS, at.round.getMeasured().get(0).getVerdict());
        at.session.undo();
        assertEquals(Verdict.FAIL, at.round.getMeasured().get(0).getVerdict());
    }

    @Test
    void anEmptiedBoxTakesTheValueOut() {
        measure("9.6 mm");
        measure(" ");
        assertTrue(at.round.getMeasured().isEmpty());
    }

    @Test
    void aValueOfSomethingElseIsNotWritten() {
        assertThrows(IllegalArgumentException.class, () -> measure("9.6 bar"));
        assertTrue(at.round.getMeasured().isEmpty());
    }

    @Test
    void aTorqueHoldsTheWrenchItself() {
        var holding = new Address("shop.xmi", "holding-78br");
        var tool = new Address("tools/torque-wrench-20-100.xmi", "torque-wrench-20-100");
        at.session.execute(lines.tightened(at.round, FASTENING,
                new Turning("45 N·m", "90 °", Optional.of(tool), Optional.of(holding), Optional.of(JobFixture.ODA))));
        var one = at.recorded().tightened(at.round, FASTENING).orElseThrow();
        assertEquals("45 N·m 90 °", one.getTorque() + " " + one.getAngle());
        assertEquals(List.of(tool, holding, JobFixture.ODA), List.of(at.to(one.getTool()).orElseThrow(),
                at.to(one.getHolding()).orElseThrow(), at.to(one.getBy()).orElseThrow()));
    }

    @Test
    void aTorqueWithoutFiguresIsTakenOut() {
        at.session.execute(lines.tightened(at.round, FASTENING,
                new Turning("45 N·m", "", Optional.empty(), Optional.empty(), Optional.empty())));
        at.session.execute(lines.tightened(at.round, FASTENING,
                new Turning("", "", Optional.empty(), Optional.empty(), Optional.of(JobFixture.ODA))));
        assertTrue(at.round.getTightened().isEmpty());
    }

    @Test
    void aRemovedPartKeepsItsCondition() {
        at.session.execute(lines.removed(at.round, JobFixture.inMachine("pto-actuator"), Optional.empty(), "Rod scored"));
        assertEquals("Rod scored", at.round.getRemoved().get(0).getCondition());
    }

    @Test
    void whatWasTickedIsSavedAndReadAgain() throws Exception {
        tick(OPENED, "30");
        measure("9.1 mm");
        at.session.save();
        assertFalse(at.session.isDirty());
        assertEquals(List.of(), List.copyOf(at.sessions.library().problems()));
    }
}
