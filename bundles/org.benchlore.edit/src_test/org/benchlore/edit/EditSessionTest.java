// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.EditSession.Event;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session edits a copy, remembers what was done, and saves through the library. */
class EditSessionTest {

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;
    private EditSession session;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
        session = sessions.open(DemoCopy.PROCEDURE);
    }

    private void title(String title) {
        session.execute(session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, title));
    }

    private void type(String text) {
        session.execute(session.edits().typing(session.element(), Literals.PROCEDURE__SUMMARY, text));
    }

    @Test
    void theLibrarysSnapshotIsNotTouched() {
        var before = session.base().orElseThrow().root().orElseThrow();
        title("Another title");
        assertNotSame(before, session.element());
        assertEquals("Renew the engagement actuator of the power take-off", before.getTitle());
    }

    @Test
    void theWorkingCopyIsWrittenAsTheFileIs() {
        assertEquals(demo.text(DemoCopy.PROCEDURE), new String(session.bytes(), java.nio.charset.StandardCharsets.UTF_8));
    }

    @Test
    void undoAndRedoAreNamedByWhatTheyDo() {
        title("Another title");
        assertEquals(Optional.of("change title"), session.undoLabel());
        session.undo();
        assertEquals("Renew the engagement actuator of the power take-off", session.element().getTitle());
        assertEquals(Optional.of("change title"), session.redoLabel());
        session.redo();
        assertEquals("Another title", session.element().getTitle());
    }

    @Test
    void thereIsNothingToUndoAtFirst() {
        assertEquals(Optional.of("There is nothing to undo"), session.undoProblem());
        assertThrows(IllegalStateException.class, session::undo);
    }

    @Test
    void itIsDirtyUntilEverythingIsTakenBack() {
        assertFalse(session.isDirty());
        title("Another title");
        assertTrue(session.isDirty());
        session.undo();
        assertFalse(session.isDirty());
    }

    @Test
    void settingWhatIsThereAlreadyDoesNothing() {
        title(session.element().getTitle());
        assertFalse(session.isDirty());
        assertEquals(Optional.empty(), session.undoLabel());
    }

    @Test
    void keystrokesInOneFieldAreUndoneTogether() {
        type("T");
        type("Tw");
        type("Twe");
        session.undo();
        assertEquals("Twenty minutes when the take-off lies on the bench, a day when the crossmember must come out for it"
                + " alone.", session.element().eGet(Literals.PROCEDURE__SUMMARY));
        assertFalse(session.isDirty());
    }

    @Test
    void leavingAFieldEndsTheRowOfKeystrokes() {
        type("one");
        session.endTyping();
        type("one two");
        session.undo();
        assertEquals("one", session.element().eGet(Literals.PROCEDURE__SUMMARY));
    }

    @Test
    void keystrokesAfterASaveAreUndoneToWhatWasSaved() throws LibraryException {
        type("saved");
        session.save();
        type("saved and more");
        session.undo();
        assertEquals("saved", session.element().eGet(Literals.PROCEDURE__SUMMARY));
        assertFalse(session.isDirty());
    }

    @Test
    void savingWritesTheFileAndTheSessionGoesOn() throws LibraryException {
        var before = session.base().orElseThrow().hash();
        title("Another title");
        assertInstanceOf(SaveResult.Saved.class, session.save());
        assertTrue(demo.text(DemoCopy.PROCEDURE).contains("title=\"Another title\""));
        assertFalse(session.isDirty());
        assertNotEquals(before, session.base().orElseThrow().hash());
        title("A third title");
        assertInstanceOf(SaveResult.Saved.class, session.save());
    }

    @Test
    void whatWasDoneBeforeASaveCanStillBeUndone() throws LibraryException {
        title("Another title");
        session.save();
        session.undo();
        assertTrue(session.isDirty());
        session.save();
        assertFalse(demo.text(DemoCopy.PROCEDURE).contains("Another title"));
    }

    @Test
    void aNewElementGetsAFreeIdAndItsFileOnSaving() throws LibraryException {
        var note = sessions.create(Kind.NOTE, "", 2026);
        note.execute(note.edits().text(note.element(), Literals.FIELD_NOTE__TEXT, "Pin was bent"));
        assertTrue(note.isDirty());
        note.save();
        assertEquals("Pin was bent", ((FieldNote) sessions.library().top(note.element().getId()).orElseThrow()).getText());
        assertTrue(note.element().isInvented());
    }

    @Test
    void aSecondElementOfTheSameTitleGetsAnotherId() throws LibraryException {
        var first = sessions.create(Kind.PART, "Seal", 2026);
        var second = sessions.create(Kind.PART, "Seal", 2026);
        assertNotEquals(first.path(), second.path());
    }

    @Test
    void thereIsNoSecondShop() {
        assertEquals("This library has its shop already: change that one",
                assertThrows(LibraryException.class, () -> sessions.create(Kind.SHOP, "Shop", 2026)).getMessage());
    }

    @Test
    void oneFileHasOneSession() throws LibraryException {
        assertSame(session, sessions.open(DemoCopy.PROCEDURE));
        session.close();
        assertNotSame(session, sessions.open(DemoCopy.PROCEDURE));
    }

    @Test
    void goingBackToWhatWasSavedCanItselfBeUndone() throws LibraryException {
        title("Another title");
        session.revert();
        assertEquals("Renew the engagement actuator of the power take-off", session.element().getTitle());
        assertFalse(session.isDirty());
        session.undo();
        assertEquals("Another title", session.element().getTitle());
        assertTrue(session.isDirty());
    }

    @Test
    void listenersHearOfEditsSavesAndTheEnd() throws LibraryException {
        var heard = new ArrayList<Event>();
        session.onEvent(heard::add);
        title("Another title");
        session.save();
        session.close();
        assertEquals(List.of(Event.EDITED, Event.SAVED, Event.CLOSED),
                heard.stream().distinct().toList());
    }

    @Test
    void aFileThatIsNotWholeIsNotEdited() throws LibraryException {
        demo.outside("units/lorry-14.xmi", "keptUntil=", "keptTill=");
        var fresh = demo.sessions();
        var refusal = assertThrows(LibraryException.class, () -> fresh.open("units/lorry-14.xmi"));
        assertTrue(refusal.getMessage().contains("mend the file first"), refusal.getMessage());
    }

    private static void runElsewhere(PendingSave pending) throws InterruptedException {
        var thread = new Thread(pending);
        thread.start();
        thread.join();
    }

    @Test
    void whatIsEditedWhileTheFileIsWrittenIsStillToBeSaved() throws Exception {
        title("Written");
        var pending = session.beginSave();
        title("Typed meanwhile");
        runElsewhere(pending);
        assertInstanceOf(SaveResult.Saved.class, session.endSave(pending));
        assertTrue(demo.text(DemoCopy.PROCEDURE).contains("title=\"Written\""));
        assertTrue(session.isDirty());
        assertInstanceOf(SaveResult.Saved.class, session.save());
        assertTrue(demo.text(DemoCopy.PROCEDURE).contains("title=\"Typed meanwhile\""));
        assertFalse(session.isDirty());
    }

    @Test
    void aConflictFoundElsewhereIsToldWhenTheSessionTakesTheOutcome() throws Exception {
        title("Mine");
        java.nio.file.Files.delete(demo.root().resolve(DemoCopy.PROCEDURE));
        var pending = session.beginSave();
        runElsewhere(pending);
        var stopped = assertInstanceOf(SaveResult.Stopped.class, session.endSave(pending));
        assertInstanceOf(Conflict.Deleted.class, stopped.conflict());
        assertTrue(session.isDirty());
    }
}
