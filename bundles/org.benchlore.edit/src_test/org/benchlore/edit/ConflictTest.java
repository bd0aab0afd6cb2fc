// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.EditSession.Event;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.compare.Side;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that was changed meanwhile is a question, never overwritten. */
class ConflictTest {

    private static final String UNIT = "units/lorry-14.xmi";
    private static final String TITLE = "title=\"Lorry 14, harbour authority\"";

    @TempDir
    Path folder;

    private DemoCopy demo;
    private EditSession session;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        session = demo.sessions().open(UNIT);
        session.execute(session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, "Lorry 14, mine"));
    }

    private <T extends Conflict> T stopped(Class<T> type) throws LibraryException {
        return assertInstanceOf(type, assertInstanceOf(SaveResult.Stopped.class, session.save()).conflict());
    }

    @Test
    void changesOfOtherFieldsGoTogetherWithoutAQuestion() throws LibraryException {
        demo.outside(UNIT, "serial=\"HL262417\"", "serial=\"HL262418\"");
        var conflict = stopped(Conflict.Changed.class);
        assertEquals(List.of(), conflict.questions());
        session.settle(conflict, Map.of());
        assertInstanceOf(SaveResult.Saved.class, session.save());
        assertTrue(demo.text(UNIT).contains("HL262418") && demo.text(UNIT).contains("Lorry 14, mine"));
    }

    @Test
    void theSameFieldIsAQuestionWithAllThreeValues() throws LibraryException {
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, theirs\"");
        var question = stopped(Conflict.Changed.class).questions().get(0);
        assertEquals(List.of("title", "Lorry 14, harbour authority", "Lorry 14, mine", "Lorry 14, theirs"),
                List.of(question.place(), question.base(), question.mine(), question.theirs()));
        assertTrue(demo.text(UNIT).contains("Lorry 14, theirs"));
    }

    @Test
    void aQuestionThatIsLeftOpenIsNobodysToDecide() throws LibraryException {
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, theirs\"");
        var conflict = stopped(Conflict.Changed.class);
        assertThrows(IllegalArgumentException.class, () -> session.settle(conflict, Map.of()));
        assertEquals("Lorry 14, mine", session.element().getTitle());
    }

    @Test
    void whatIsTypedWhileTheDiskIsLookedAtIsInTheQuestions() throws LibraryException {
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, theirs\"");
        var pending = session.beginSave();
        session.execute(session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, "Lorry 14, mine again"));
        pending.run();
        var stopped = assertInstanceOf(SaveResult.Stopped.class, session.endSave(pending));
        assertEquals("Lorry 14, mine again", ((Conflict.Changed) stopped.conflict()).questions().get(0).mine());
    }

    @Test
    void theAnswersAreOneEditThatCanBeUndone() throws LibraryException {
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, theirs\"");
        var conflict = stopped(Conflict.Changed.class);
        session.settle(conflict, Map.of(conflict.questions().get(0).id(), Side.THEIRS));
        assertEquals("Lorry 14, theirs", session.element().getTitle());
        assertEquals(Optional.empty(), session.conflict());
        session.undo();
        assertEquals("Lorry 14, mine", session.element().getTitle());
        assertTrue(session.conflict().isPresent());
    }

    @Test
    void aDeletedFileIsToldAndCanBeKept() throws LibraryException, IOException {
        Files.delete(demo.root().resolve(UNIT));
        session.keep(stopped(Conflict.Deleted.class));
        assertInstanceOf(SaveResult.Saved.class, session.save());
        assertTrue(demo.text(UNIT).contains("Lorry 14, mine"));
    }

    @Test
    void aDamagedFileIsNeverSavedOver() throws LibraryException {
        demo.outside(UNIT, "keptUntil=", "keptTill=");
        var conflict = stopped(Conflict.Unreadable.class);
        assertTrue(conflict.sentence().contains("mend the file"), conflict.sentence());
        assertTrue(demo.text(UNIT).contains("keptTill"));
    }

    @Test
    void aMendedFileIsAskedAboutAgain() throws LibraryException {
        demo.outside(UNIT, "keptUntil=", "keptTill=");
        stopped(Conflict.Unreadable.class);
        demo.outside(UNIT, "keptTill=", "keptUntil=");
        assertInstanceOf(SaveResult.Saved.class, session.save());
    }

    @Test
    void theSameChangeMadeOutsideIsNoConflict() throws LibraryException {
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, mine\"");
        assertInstanceOf(SaveResult.Saved.class, session.save());
        assertFalse(session.isDirty());
    }

    @Test
    void listenersHearOfAChangeThatTheLibraryTookIn() throws Exception {
        var heard = new ArrayList<Event>();
        session.onEvent(heard::add);
        demo.outside(UNIT, TITLE, "title=\"Lorry 14, theirs\"");
        session.library().refresh(new NullProgressMonitor());
        assertEquals(List.of(Event.OUTSIDE), heard);
    }

    @Test
    void savingItselfIsNoChangeFromOutside() throws LibraryException {
        var heard = new ArrayList<Event>();
        session.onEvent(heard::add);
        session.save();
        assertFalse(heard.contains(Event.OUTSIDE));
    }

    @Test
    void aNewElementWhoseFileExistsByNowIsAQuestion() throws LibraryException, IOException {
        var fresh = demo.sessions().create(org.benchlore.model.Kind.PART, "Brass pin", 2026);
        Files.writeString(demo.root().resolve(fresh.path()), new String(fresh.bytes(),
                java.nio.charset.StandardCharsets.UTF_8).replace("Brass pin", "Steel pin"));
        var conflict = assertInstanceOf(SaveResult.Stopped.class, fresh.save()).conflict();
        assertEquals(List.of("title"), assertInstanceOf(Conflict.Changed.class, conflict).questions().stream()
                .map(question -> question.place()).toList());
    }

    @Test
    void anotherFilesAnswerIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> session.keep(new Conflict.Deleted("units/lorry-17.xmi")));
    }
}
