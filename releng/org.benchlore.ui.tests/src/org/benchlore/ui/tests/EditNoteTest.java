// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

class EditNoteTest extends EditorTest {

    private static final String NOTE_ID = "note-2025-learning-fails-on-a-fresh-install-k7m3";

    private void begin(String title) {
        window.focus(window.find("tree.filter", Control.class));
        window.pressLetter('n', SWT.CTRL);
        var field = window.find("new.title", Text.class);
        window.waitUntil("the title has the cursor", field::isFocusControl);
        window.type(title);
        window.press(SWT.CR);
        window.waitUntil("the text has the cursor", () -> window.has("FieldNote.text")
                && edit.text("FieldNote.text").isFocusControl());
    }

    @Test
    void noteWrittenByKeyboardIsUndoneRedoneSavedAndFound() {
        begin("zzwubble");
        assertTrue(edit.head().startsWith("1 field is to be mended"), edit.head());
        window.type("zzwubble when cold");
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("it is taken back", () -> edit.text("FieldNote.text").getText().isEmpty());
        window.pressLetter('z', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("it is there again", () -> edit.text("FieldNote.text").getText().equals("zzwubble when cold"));
        edit.save();
        var hits = new SearchDriver(window).search("zzwubble");
        window.waitUntil("it is found", () -> hits.getItemCount() == 1
                && hits.getItem(0).getText().startsWith("zzwubble, Field note, unsorted, "));
    }

    @Test
    void noteWithoutTextIsNotSaved() {
        begin("zzempty");
        window.pressLetter('s', SWT.CTRL);
        assertTrue(edit.editor().isDirty());
        assertTrue(window.find("problem.FieldNote.text", Label.class).getText().startsWith("Nothing is written yet"));
    }

    @Test
    void componentIsChosenByAFewLetters() throws Exception {
        edit.open(LibraryCopy.NOTE, NOTE_ID);
        var field = edit.text("FieldNote.component");
        edit.focus(field);
        field.selectAll();
        window.type("position sen");
        var choices = window.find("FieldNote.component.choices", Table.class);
        assertEquals(0, choices.getSelectionIndex());
        window.screenshot("edit-choices");
        window.press(SWT.CR);
        window.waitUntil("it is chosen", () -> field.getText().toLowerCase().contains("position sensor"));
        edit.save();
        assertTrue(Files.readString(library.file(LibraryCopy.NOTE)).contains("#pto-position-sensor"));
    }

    @Test
    void whatIsChosenOnceIsClearedByItsButton() throws Exception {
        edit.open(LibraryCopy.NOTE, NOTE_ID);
        edit.focus(edit.text("FieldNote.unit"));
        edit.click("FieldNote.unit.clear");
        assertEquals("", edit.text("FieldNote.unit").getText());
        assertFalse(window.find("FieldNote.unit.page", Button.class).isEnabled());
        edit.save();
        assertFalse(Files.readString(library.file(LibraryCopy.NOTE)).contains("<unit\n      href=\"../../units/lorry-17"));
    }

    @Test
    void damagedFileIsForReadingOnlyWithTheReason() throws Exception {
        var file = library.file(LibraryCopy.NOTE);
        Files.writeString(file, Files.readString(file).replace("status=\"SEEN\"", "status=\"SEEN\" weather=\"wet\""));
        LibraryCopy.session().refresh();
        window.waitUntil("it is noticed", () -> !LibraryCopy.session().current().orElseThrow().problems().isEmpty());
        edit.open(LibraryCopy.NOTE, NOTE_ID);
        assertTrue(edit.head().startsWith("For reading only. "), edit.head());
        assertFalse(edit.text("FieldNote.text").getEditable());
        assertTrue(edit.text("FieldNote.text").getText().startsWith("learning fails"));
        window.screenshot("edit-read-only");
    }

    @Test
    void f2EditsThePageThatIsRead() {
        window.find("search.field", Text.class);
        var hits = new SearchDriver(window).search("fresh install");
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the list has the cursor", hits::isFocusControl);
        window.press(SWT.CR);
        window.find("page.text", Control.class);
        window.press(SWT.F2);
        window.waitUntil("the editor is there", () -> window.has("FieldNote.text"));
        assertEquals(0, window.find("search.hits", Table.class).getSelectionIndex());
    }
}
