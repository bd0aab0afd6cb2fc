// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveAll;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.desk.SeenAgain.Occasion;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.benchlore.model.Procedure;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seen again, status, and a note that becomes a step. */
class NoteWorkTest {

    private static final String TALLIED = "notes/2025/note-2025-learning-fails-on-a-fresh-install-k7m3.xmi";
    private static final String FILTER = "notes/2026/note-2026-filter-black-after-burnt-pack-g8mq.xmi";
    private static final Occasion OCCASION = new Occasion(Optional.of(Address.parse("units/lorry-21.xmi#lorry-21")),
            LocalDate.of(2026, 11, 25), Optional.of(Address.parse("shop.xmi#jory-pask")));

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;

    @BeforeEach
    void open() {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
    }

    private FieldNote saved(String path) {
        return (FieldNote) sessions.library().file(path).orElseThrow().root().orElseThrow();
    }

    @Test
    void seenAgainRaisesTheCountAndKeepsWhenAndWhere() throws LibraryException {
        SeenAgain.record(sessions, TALLIED, OCCASION);
        var tally = saved(TALLIED).getSeen();
        assertEquals(List.of(4, 40, 2021, 4),
                List.of(tally.getCount(), tally.getOfAbout(), tally.getSince(), tally.getSightings().size()));
        var last = tally.getSightings().get(3);
        assertEquals(OCCASION, new Occasion(sessions.library().addressOf(last.getUnit()), last.getDate(),
                sessions.library().addressOf(last.getBy())));
        assertEquals(List.of(), sessions.library().problems());
        assertEquals(Optional.empty(), sessions.find(TALLIED));
    }

    @Test
    void aNoteWithoutATallyWasSeenOnceWhenItWasWritten() throws LibraryException {
        var path = sessions.library().catalogue().rows(org.benchlore.model.Kind.NOTE)
                .filter(row -> saved(row.path()).getSeen() == null && row.date().isPresent()).findFirst().orElseThrow().path();
        SeenAgain.record(sessions, path, OCCASION);
        assertEquals(2, saved(path).getSeen().getCount());
        assertEquals(List.of(saved(path).getDate(), OCCASION.date()),
                saved(path).getSeen().getSightings().stream().map(sighting -> sighting.getDate()).toList());
    }

    @Test
    void seenAgainIsOneEdit() throws LibraryException {
        var session = sessions.open(TALLIED);
        session.execute(SeenAgain.edit(session, OCCASION));
        session.undo();
        assertFalse(session.isDirty());
        assertEquals(demo.text(TALLIED), new String(session.bytes(), java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void aNoteThatIsBeingEditedIsNotSavedBehindItsEditorsBack() throws LibraryException {
        var session = sessions.open(TALLIED);
        var before = demo.text(TALLIED);
        SeenAgain.record(sessions, TALLIED, OCCASION);
        assertTrue(session.isDirty());
        assertEquals(before, demo.text(TALLIED));
    }

    @Test
    void aProcedureIsNotSeenAgain() throws LibraryException {
        var session = sessions.open(DemoCopy.PROCEDURE);
        assertThrows(IllegalArgumentException.class, () -> SeenAgain.edit(session, OCCASION));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "UNSORTED|", "SUSPECTED|Say on which machine or unit",
        "SEEN|Say on which machine or unit; Write what was found, or name the component or the cause",
        "HELD|Say on which machine or unit; Write what was found, or name the component or the cause; Write what was done;"
            + " Write how it was proved that it held",
        "RULED_OUT|Write why it is ruled out: what was found, or how it was proved",
        "SUPERSEDED|Name the note that replaces it"})
    void aStatusSaysWhatItNeeds(NoteStatus status, String sentences) {
        var bare = org.benchlore.model.BookFactory.eINSTANCE.createFieldNote();
        assertEquals(sentences == null ? "" : sentences,
                String.join("; ", NoteStatuses.lacks(bare, status).stream().map(NoteStatuses.Lack::sentence).toList()));
    }

    @Test
    void aStatusIsRefusedWhileSomethingLacks() throws LibraryException {
        var session = sessions.open(FILTER);
        assertEquals("Write how it was proved that it held", assertThrows(IllegalArgumentException.class, () ->
                NoteStatuses.change(session, NoteStatus.HELD)).getMessage());
        session.execute(session.edits().text(session.element(), Literals.FIELD_NOTE__VERIFICATION, "Two weeks, no code"));
        session.execute(NoteStatuses.change(session, NoteStatus.HELD));
        assertEquals(NoteStatus.HELD, ((FieldNote) session.element()).getStatus());
    }

    @Test
    void aNoteIsReplacedByAnotherAndTakenBackIntoUse() throws LibraryException {
        var session = sessions.open(FILTER);
        session.execute(NoteStatuses.supersede(session, new Address(TALLIED, saved(TALLIED).getId())));
        assertEquals(NoteStatus.SUPERSEDED, ((FieldNote) session.element()).getStatus());
        session.execute(NoteStatuses.change(session, NoteStatus.SUSPECTED));
        assertNull(((FieldNote) session.element()).getSupersededBy());
    }

    @Test
    void aNoteCannotReplaceItselfOverAnother() throws LibraryException {
        var session = sessions.open(FILTER);
        session.execute(NoteStatuses.supersede(session, new Address(TALLIED, saved(TALLIED).getId())));
        session.save();
        var other = sessions.open(TALLIED);
        var filter = new Address(FILTER, session.element().getId());
        assertThrows(IllegalArgumentException.class, () -> NoteStatuses.supersede(other, filter));
    }

    @Test
    void aStepFromANoteLinksBothWaysAndIsUndoneAsOne() throws LibraryException {
        EditSession note = sessions.open(FILTER);
        EditSession procedure = sessions.open("procedures/renew-pto-pack-filter.xmi");
        var work = ((Procedure) procedure.element()).getWays().get(0).getWork();
        var step = NoteToStep.execute(note, procedure, work, 1);
        assertEquals(step, work.getSteps().get(1));
        assertTrue(step.getText().startsWith("Press builds up slow again"));
        assertTrue(SaveAll.save(List.of(procedure, note)).isComplete());
        assertTrue(sessions.library().catalogue().referringTo(FILTER).anyMatch(row -> row.path().equals(procedure.path())));
        assertTrue(sessions.library().catalogue().referringTo(procedure.path()).anyMatch(row -> row.path().equals(FILTER)));
        assertEquals(List.of(), sessions.library().problems());
        if (note.undoLabel().isPresent()) {
            note.undo();
        } else {
            procedure.undo();
        }
        assertFalse(work.getSteps().contains(step));
    }
}
