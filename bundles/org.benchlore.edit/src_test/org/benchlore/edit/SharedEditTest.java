// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.store.LibraryException;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One edit over several files is done, undone and saved as one, or it is told what was not. */
class SharedEditTest {

    @TempDir
    Path folder;

    private DemoCopy demo;
    private EditSession first;
    private EditSession second;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        var sessions = demo.sessions();
        first = sessions.open("units/lorry-14.xmi");
        second = sessions.open("units/lorry-17.xmi");
    }

    private static Edit title(EditSession session) {
        return session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, "new title");
    }

    private void both() {
        var edits = new LinkedHashMap<EditSession, Edit>();
        edits.put(first, title(first));
        edits.put(second, title(second));
        SharedEdit.execute("rename both", edits);
    }

    private List<Boolean> renamed() {
        return List.of(first.element().getTitle().equals("new title"), second.element().getTitle().equals("new title"));
    }

    @Test
    void undoInOneSessionUndoesItInAll() {
        both();
        assertEquals(List.of(true, true), renamed());
        second.undo();
        assertEquals(List.of(false, false), renamed());
        first.redo();
        assertEquals(List.of(true, true), renamed());
        assertEquals(Optional.of("rename both"), second.undoLabel());
    }

    @Test
    void itIsNotUndoneByHalfWhenOneFileWasChangedSince() {
        both();
        second.execute(second.edits().text(second.element(), Literals.UNIT__SERIAL, "1"));
        assertEquals(Optional.of("'rename both' cannot be undone yet: it changed 'new title' too, which was changed since;"
                + " undo that first"), first.undoProblem());
        assertThrows(IllegalStateException.class, first::undo);
        assertEquals(List.of(true, true), renamed());
    }

    @Test
    void itIsNotUndoneByHalfWhenOneSessionIsClosed() {
        both();
        second.close();
        assertTrue(first.undoProblem().orElseThrow().contains("which is closed"));
    }

    @Test
    void whatCannotBeDoneInOneIsDoneInNone() {
        var edits = new LinkedHashMap<EditSession, Edit>();
        edits.put(first, title(first));
        edits.put(second, Edit.of("impossible", UnexecutableCommand.INSTANCE));
        assertThrows(IllegalArgumentException.class, () -> SharedEdit.execute("rename both", edits));
        assertEquals(List.of(false, false), renamed());
        assertFalse(first.isDirty());
    }

    @Test
    void allAreSavedInOrder() {
        both();
        assertEquals(new SaveAll.Report(List.of(first.path(), second.path()), List.of(), Optional.empty()),
                SaveAll.save(List.of(first, second)));
    }

    @Test
    void aConflictInTheLastIsSeenBeforeTheFirstIsWritten() {
        both();
        demo.outside(second.path(), "serial=", "serial=\"x\" variant=");
        demo.outside(second.path(), "variant=\"HL 26-A\"", "");
        var report = SaveAll.save(List.of(first, second));
        assertEquals(List.of(), report.saved());
        assertEquals(List.of(first.path(), second.path()), report.notSaved());
        assertTrue(report.reason().orElseThrow().startsWith("Nothing was saved: units/lorry-17.xmi was "),
                report.reason().orElseThrow());
        assertFalse(demo.text(first.path()).contains("new title"));
    }

    @Test
    void whatWasWrittenBeforeAFailureIsNamed() {
        both();
        first.onEvent(event -> {
            if (event == EditSession.Event.SAVED) {
                demo.outside(second.path(), "Lorry 17", "Lorry seventeen");
            }
        });
        var report = SaveAll.save(List.of(first, second));
        assertEquals(List.of(first.path()), report.saved());
        assertEquals(List.of(second.path()), report.notSaved());
        assertTrue(report.reason().orElseThrow().startsWith("Saved: units/lorry-14.xmi. Not saved: units/lorry-17.xmi: "),
                report.reason().orElseThrow());
    }
}
