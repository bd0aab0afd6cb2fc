// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Test;

/** What keeps writing from being lost or from going over what it must not. */
class EditGuardTest extends EditorTest {

    private static final String FILE = "parts/pto-actuator.xmi";

    private String file() throws Exception {
        return read(FILE);
    }

    @Test
    void aFileThatMayNotBeWrittenIsForReadingOnly() {
        Path file = library.file(FILE);
        assertTrue(file.toFile().setWritable(false));
        // The superuser may write everything; then the editor lets them.
        boolean mayWrite = Files.isWritable(file);
        edit.open(FILE, "pto-actuator");
        assertEquals(mayWrite, edit.text("TopElement.title").getEditable());
        assertEquals(mayWrite ? FILE : "For reading only. " + FILE + " is marked as read-only on the disk: remove that mark"
                + " first", edit.head());
    }

    @Test
    void nothingIsWrittenOverAFileThatCannotBeReadAnyMore() throws Exception {
        edit.open(FILE, "pto-actuator");
        edit.write("TopElement.title", "Mine");
        Files.writeString(library.file(FILE), file().replace("number=", "wheels=\"4\" number="));
        edit.whenActive("Not Saved", () -> window.press(SWT.CR));
        window.pressLetter('s', SWT.CTRL);
        window.workFor(300);
        assertTrue(edit.editor().isDirty());
        assertTrue(file().contains("wheels=\"4\""));
    }

    @Test
    void closingAsksAndSavesWhenTold() throws Exception {
        edit.open(FILE, "pto-actuator");
        edit.write("TopElement.title", "Mine after all");
        Display.getCurrent().timerExec(700, () -> window.press(SWT.CR));
        EditDriver.page().closeEditor(edit.editor(), true);
        window.waitUntil("it is closed", () -> EditDriver.page().getEditorReferences().length == 0);
        assertTrue(file().contains("title=\"Mine after all\""));
        assertEquals(0, EditDriver.editing().drafts().size());
    }

    @Test
    void closingCanBeCalledOff() throws Exception {
        edit.open(FILE, "pto-actuator");
        edit.write("TopElement.title", "Not yet");
        var before = file();
        Display.getCurrent().timerExec(700, () -> window.press(SWT.ESC));
        EditDriver.page().closeEditor(edit.editor(), true);
        window.workFor(300);
        assertTrue(edit.editor().isDirty());
        assertEquals(before, file());
    }

    @Test
    void theMenuOfTheTreeEdits() {
        var filter = window.find("tree.filter", org.eclipse.swt.widgets.Text.class);
        window.focus(filter);
        window.type("pto-actuator");
        var tree = window.find("tree.nodes", Tree.class);
        window.waitUntil("it is found", () -> leaf(tree.getItems()) != null);
        tree.setSelection(leaf(tree.getItems()));
        tree.notifyListeners(SWT.Selection, new Event());
        tree.getMenu().getItem(1).notifyListeners(SWT.Selection, new Event());
        window.waitUntil("an editor is there", () -> window.has("form.head"));
        filter.setText("");
    }

    private static org.eclipse.swt.widgets.TreeItem leaf(org.eclipse.swt.widgets.TreeItem[] items) {
        for (var item : items) {
            var inner = item.getItemCount() == 0 ? item : leaf(item.getItems());
            if (inner != null && !inner.getText().isEmpty()) {
                return inner;
            }
        }
        return null;
    }

    @Test
    void theMenuOfTheHitsEdits() {
        var hits = new SearchDriver(window).search("fresh install");
        window.waitUntil("something is found", () -> hits.getItemCount() > 0);
        window.find("search.hits", Table.class).getMenu().getItem(1).notifyListeners(SWT.Selection, new Event());
        window.waitUntil("the editor is there", () -> window.has("FieldNote.text"));
    }
}
