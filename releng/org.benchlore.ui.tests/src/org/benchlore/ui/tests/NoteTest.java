// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class NoteTest {

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        new SearchDriver(window);
    }

    @AfterEach
    void close() throws Exception {
        if (window.has("note.text")) {
            window.find("note.text", Text.class).getShell().close();
        }
        library.close();
    }

    private Text dialog() {
        var text = window.find("note.text", Text.class);
        window.waitUntil("the dialog has the cursor", text::isFocusControl);
        return text;
    }

    private void saved(String words) {
        window.waitUntil("its page is there", () -> !window.has("note.text") && window.has("page.text")
                && window.find("page.text", StyledText.class).getText().contains(words));
    }

    @Test
    void nothingFoundLeadsToTheFirstNoteWhichIsFoundAtOnce() {
        window.type("zzwibble");
        window.find("search.guide.note", Button.class);
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.CR);
        assertEquals("zzwibble", dialog().getText());
        window.type(" when wet");
        window.screenshot("first-note");
        window.press(SWT.CR, SWT.CTRL);
        saved("zzwibble when wet");
        window.waitUntil("it is found", () -> window.has("search.hits")
                && window.find("search.hits", Table.class).getItem(0).getText()
                        .startsWith("zzwibble when wet, Field note, unsorted, "));
    }

    @Test
    void shortcutBeginsANoteFromAnywhere() {
        window.focus(window.find("tree.filter", Control.class));
        window.pressLetter('n', SWT.CTRL, SWT.SHIFT);
        var text = dialog();
        assertFalse(window.find("note.save", Button.class).isEnabled());
        window.type("wibbles");
        assertTrue(window.find("note.save", Button.class).isEnabled());
        assertEquals("wibbles", text.getText());
        window.press(SWT.TAB);
        window.waitUntil("Tab leaves the text", () -> !text.isFocusControl());
    }

    @Test
    void noteThatCannotBeSavedStaysInTheDialog() throws Exception {
        putAFileInThePlaceOf(library.file("notes/" + LocalDate.now().getYear()));
        window.focus(window.find("tree.filter", Control.class));
        window.pressLetter('n', SWT.CTRL, SWT.SHIFT);
        var text = dialog();
        window.type("wibbles");
        window.press(SWT.CR, SWT.CTRL);
        var problem = window.find("note.problem", Label.class);
        window.waitUntil("it says why", () -> problem.getText().startsWith("The note was not saved: notes/"));
        assertEquals("wibbles", text.getText());
        assertTrue(text.getEditable());
    }

    private static void putAFileInThePlaceOf(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (var files = Files.list(folder)) {
                for (var file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
        Files.createFile(folder);
    }
}
