// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;

import org.benchlore.model.Address;
import org.benchlore.ui.page.PageOpener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One key on a note: seen again, and a step of a procedure. */
class NoteKeysTest {

    private static final Address NOTE = new Address(LibraryCopy.NOTE, "note-2025-learning-fails-on-a-fresh-install-k7m3");
    private static final Address UNIT = Address.parse("units/lorry-21.xmi#lorry-21");

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private String before;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        before = file();
    }

    @AfterEach
    void close() throws Exception {
        EditDriver.page().closeAllEditors(false);
        library.close();
    }

    private String file() throws Exception {
        return Files.readString(library.file(LibraryCopy.NOTE));
    }

    private StyledText page(Address address, String words) {
        new PageOpener(EditDriver.page(), LibraryCopy.session()).open(address);
        window.waitUntil("the page is there", () -> window.has("page.text")
                && window.find("page.text", StyledText.class).getText().contains(words));
        var text = window.find("page.text", StyledText.class);
        window.focus(text);
        return text;
    }

    @Test
    void f8AddsTheUnitReadLastAndTheDateAndUndoTakesItBack() throws Exception {
        page(UNIT, "Lorry 21");
        var page = page(NOTE, "Seen 3 of about 40");
        window.press(SWT.F8);
        window.waitUntil("the page counts it", () -> page.getText().contains("Seen 4 of about 40"));
        assertTrue(file().contains("units/lorry-21.xmi#lorry-21"), file());
        assertTrue(file().contains(LocalDate.now().toString()), file());
        window.screenshot("seen-again");
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("it is taken back", () -> page.getText().contains("Seen 3 of about 40"));
        assertEquals(before, file());
    }

    @Test
    void f8WorksOnAHitOfTheSearch() throws Exception {
        var hits = new SearchDriver(window).search("fresh install");
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the list has the cursor", hits::isFocusControl);
        assertTrue(hits.getItem(0).getText().contains("Field note"), hits.getItem(0).getText());
        window.press(SWT.F8);
        window.workFor(300);
        assertTrue(Files.walk(library.file("notes")).filter(Files::isRegularFile).anyMatch(this::isOfToday));
    }

    private boolean isOfToday(java.nio.file.Path note) {
        try {
            return Files.readString(note).contains("date=\"" + LocalDate.now() + "\"");
        } catch (java.io.IOException e) {
            return false;
        }
    }

    @Test
    void f9MakesAStepInTheProposedProcedureAndOpensItThere() throws Exception {
        page(NOTE, "Seen 3");
        window.press(SWT.F9);
        var procedures = window.find("step.procedures", Table.class);
        var places = window.find("step.places", Table.class);
        assertTrue(procedures.getSelectionCount() == 1 && places.getSelectionCount() == 1);
        window.screenshot("note-to-step");
        window.press(SWT.CR);
        window.waitUntil("the step is being edited", () -> window.has("Step.text")
                && window.find("Step.text", Text.class).getText().startsWith("learning fails"));
        assertTrue(EditDriver.page().getActiveEditor().isDirty());
        window.screenshot("note-to-step-editor");
        window.focus(window.find("Step.text", Text.class));
        window.pressLetter('z', SWT.CTRL);
        window.waitUntil("it is undone", () -> EditDriver.page().getDirtyEditors().length == 0);
        assertFalse(file().isEmpty());
        assertEquals(before, file());
    }
}
