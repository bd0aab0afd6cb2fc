// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.desk.SeenAgain.Occasion;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Procedure;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One key, saved at once, taken back; the unit in hand; where a step belongs. */
class QuickChangeTest {

    private static final String NOTE = "notes/2025/note-2025-learning-fails-on-a-fresh-install-k7m3.xmi";
    private static final Occasion TODAY = new Occasion(Optional.empty(), LocalDate.of(2026, 11, 25), Optional.empty());
    private static final QuickChange.Maker SEEN = session -> SeenAgain.edit(session, TODAY);
    private static final Address LORRY = Address.parse("units/lorry-14.xmi#lorry-14");
    private static final Address SWEEPER = Address.parse("units/sweeper-3.xmi#sweeper-3");
    private static final Address JOB = Address.parse("jobs/2025/job-2025-clutch-pack-lorry-17-w4t9.xmi"
            + "#job-2025-clutch-pack-lorry-17-w4t9");

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;

    @BeforeEach
    void open() {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
    }

    private byte[] bytes() throws Exception {
        return Files.readAllBytes(demo.root().resolve(NOTE));
    }

    private FieldNote note() {
        return (FieldNote) sessions.library().file(NOTE).orElseThrow().root().orElseThrow();
    }

    @Test
    void takingBackLeavesEveryByteAsItWas() throws Exception {
        var before = bytes();
        var change = QuickChange.make(sessions, NOTE, SEEN).orElseThrow();
        assertTrue(new String(bytes()).contains("2026-11-25"));
        change.takeBack();
        assertArrayEquals(before, bytes());
    }

    @Test
    void whatWasChangedSinceIsNotTakenBack() throws Exception {
        var change = QuickChange.make(sessions, NOTE, SEEN).orElseThrow();
        QuickChange.make(sessions, NOTE, SEEN);
        var now = bytes();
        assertThrows(LibraryException.class, change::takeBack);
        assertArrayEquals(now, bytes());
    }

    @Test
    void anElementThatIsBeingEditedIsChangedThere() throws Exception {
        try (var session = sessions.open(NOTE)) {
            var before = bytes();
            assertEquals(Optional.empty(), QuickChange.make(sessions, NOTE, SEEN));
            assertTrue(session.isDirty());
            assertArrayEquals(before, bytes());
        }
    }

    @Test
    void theUnitReadLastThatIsOfTheNotesMachineIsInHand() {
        assertEquals(Optional.of(LORRY), UnitInHand.find(sessions.library(), note(), List.of(SWEEPER, LORRY, JOB)));
    }

    @Test
    void aJobReadLastTellsItsUnit() {
        assertEquals(Optional.of("lorry-17"),
                UnitInHand.find(sessions.library(), note(), List.of(JOB, LORRY)).map(Address::id));
    }

    @Test
    void noUnitIsInHandIfNoneOfTheMachineWasRead() {
        assertEquals(Optional.empty(), UnitInHand.find(sessions.library(), note(), List.of(SWEEPER)));
    }

    @Test
    void theProcedureDuringWhichItWasLearnedComesFirst() {
        var first = new StepPlaces(sessions.library()).procedures(note()).get(0);
        var during = note().getDuring().stream().map(sessions.library()::addressOf).flatMap(Optional::stream).toList();
        assertTrue(during.isEmpty() || during.contains(first.address()), first.title());
        assertTrue(new StepPlaces(sessions.library()).procedures(note()).stream().map(Row::status)
                .noneMatch("WITHDRAWN"::equals));
    }

    @Test
    void theStepBelongsBehindTheOneThatSaysMostOfTheSame() throws LibraryException {
        var work = ((Procedure) sessions.open(DemoCopy.PROCEDURE).element()).getWays().get(0).getWork();
        var minute = MinuteNote.begin(sessions, TODAY.date());
        minute.write(work.getSteps().get(1).getText());
        assertEquals(2, StepPlaces.index(minute.note(), work));
        minute.write("zzwibble");
        assertEquals(InnerEdits.END, StepPlaces.index(minute.note(), work));
    }
}
