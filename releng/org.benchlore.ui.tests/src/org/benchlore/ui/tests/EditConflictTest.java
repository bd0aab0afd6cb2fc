// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.util.Random;

import org.benchlore.edit.Sessions;
import org.benchlore.edit.draft.Autosave;
import org.benchlore.edit.draft.Drafts;
import org.benchlore.model.BookPackage.Literals;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;

class EditConflictTest extends EditorTest {

    private static final String FILE = "parts/pto-actuator.xmi";

    private String file() throws Exception {
        return read(FILE);
    }

    private void changeOutside(String from, String to) throws Exception {
        Files.writeString(library.file(FILE), file().replaceFirst(from, to));
    }

    @Test
    void outsideEditIsAnsweredFieldByField() throws Exception {
        edit.open(FILE, "pto-actuator");
        edit.write("TopElement.title", "Mine");
        edit.write("Part.maker", "Mine and Sons");
        changeOutside("title=\"[^\"]*\"", "title=\"Theirs\"");
        changeOutside("maker=\"[^\"]*\"", "maker=\"Theirs Ltd\"");
        edit.whenThere("conflict.ok", () -> {
            var ok = window.find("conflict.ok", Button.class);
            assertTrue(!ok.isEnabled(), "nothing is chosen beforehand");
            window.screenshot("edit-conflict");
            choose("conflict.mine.0");
            choose("conflict.theirs.1");
            ok.notifyListeners(SWT.Selection, null);
        });
        edit.save();
        assertTrue(file().contains("title=\"Mine\"") && file().contains("maker=\"Theirs Ltd\""), this::text);
        edit.focus(edit.text("Part.maker"));
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("the answers are taken back as one",
                () -> edit.text("Part.maker").getText().equals("Mine and Sons"));
    }

    private String text() {
        try {
            return file();
        } catch (Exception e) {
            return e.toString();
        }
    }

    private void choose(String id) {
        var radio = window.find(id, Button.class);
        radio.setSelection(true);
        radio.notifyListeners(SWT.Selection, null);
    }

    @Test
    void editorWithoutChangesShowsWhatIsOnTheDiskNow() throws Exception {
        edit.open(FILE, "pto-actuator");
        changeOutside("title=\"[^\"]*\"", "title=\"Theirs\"");
        LibraryCopy.session().refresh();
        window.waitUntil("it is shown", () -> edit.text("TopElement.title").getText().equals("Theirs"));
        assertTrue(!edit.editor().isDirty());
    }

    @Test
    void deletedFileIsSavedAnewWhenAsked() throws Exception {
        edit.open(FILE, "pto-actuator");
        edit.write("TopElement.title", "Mine");
        Files.delete(library.file(FILE));
        edit.whenActive("Deleted Meanwhile", () -> window.press(SWT.CR));
        edit.save();
        assertTrue(file().contains("title=\"Mine\""));
    }

    @Test
    void draftOfAProgramThatEndedIsRestored() throws Exception {
        leaveDraft("Written before the end");
        var folder = library.file("");
        LibraryCopy.session().close();
        window.waitUntil("it is closed", () -> LibraryCopy.session().current().isEmpty());
        LibraryCopy.session().open(folder);
        var words = window.find("recovery.draft.0", Label.class);
        assertTrue(words.getText().contains("Written before the end") && words.getText().contains("as it was"),
                words.getText());
        window.screenshot("edit-recovery");
        edit.click("recovery.restore.0");
        window.waitUntil("the editor shows it", () -> window.has("TopElement.title")
                && edit.text("TopElement.title").getText().equals("Written before the end"));
        assertTrue(edit.editor().isDirty());
        edit.save();
        assertTrue(file().contains("title=\"Written before the end\""));
        assertEquals(0, EditDriver.editing().drafts().size());
    }

    /** What a second program would leave behind if it was killed: the draft, and nobody who holds its folder. */
    private void leaveDraft(String title) throws Exception {
        var opened = LibraryCopy.session().current().orElseThrow().library().library();
        var drafts = new Drafts(LibraryCopy.session().workshop().places().draftsOf(opened.root()));
        var sessions = new Sessions(opened, new Random(7));
        var autosave = new Autosave(drafts, sessions, Clock.systemUTC(), Duration.ZERO);
        var session = sessions.open(FILE);
        session.execute(session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, title));
        autosave.tick();
        autosave.close();
        drafts.close();
    }
}
