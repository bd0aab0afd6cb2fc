// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;

import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.FormEditor;
import org.benchlore.ui.look.Appearance;
import org.benchlore.ui.page.PageEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProblemsTest {

    private static final String FILE = "parts/pto-actuator.xmi";
    private static final String RULE = "held-without-proof";

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Table table;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(Ids.PROBLEMS_VIEW);
        table = window.find("problems.table", Table.class);
        window.find("problems.filter", Text.class).setText("");
        silenced(false);
        window.waitUntil("it was checked", () -> summary().contains("files checked by"));
    }

    @AfterEach
    void close() throws Exception {
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().closeAllEditors(false);
        library.close();
    }

    private void silenced(boolean shown) {
        var toggle = window.find("problems.silenced", Button.class);
        toggle.setSelection(shown);
        toggle.notifyListeners(SWT.Selection, null);
    }

    private String summary() {
        return window.find("problems.summary", Label.class).getText();
    }

    private boolean shows(int column, String start) {
        return Arrays.stream(table.getItems()).anyMatch(item -> item.getText(column).startsWith(start));
    }

    /** Lets the note of the lead story say that the fix held, without saying how that was proved. */
    private void spoilNote() throws IOException {
        var file = library.file(LibraryCopy.NOTE);
        Files.writeString(file, Files.readString(file).replace("status=\"SEEN\"", "status=\"HELD\"")
                .replaceAll("(?s)\\s*<verification>.*?</verification>", ""));
        LibraryCopy.session().refresh();
        window.waitUntil("the rule's problem is listed", () -> shows(3, RULE));
        window.focus(table);
        table.setSelection(indexOfRule());
        table.notifyListeners(SWT.Selection, null);
    }

    private int indexOfRule() {
        return Arrays.stream(table.getItems()).map(item -> item.getText(3)).toList().indexOf(RULE);
    }

    private IEditorPart editor() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().getActiveEditor();
    }

    private String note() throws IOException {
        return Files.readString(library.file(LibraryCopy.NOTE));
    }

    @Test
    void corruptFileIsListedWithItsLineAndReason() throws Exception {
        Files.writeString(library.file(FILE), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<broken\n");
        LibraryCopy.session().refresh();
        window.waitUntil("the file is listed once, with its line", () -> Arrays.stream(table.getItems())
                .filter(item -> item.getText(1).equals(FILE) && item.getText(0).equals("Error")).count() == 1);
        assertTrue(shows(2, "Line 3: the file is no well-formed XML"), summary());
    }

    @Test
    void demonstrationLibraryHasNothingToMendAndSaysWhatWasChecked() {
        assertEquals(0, table.getItemCount());
        assertTrue(summary().matches("Nothing to mend: \\d{2,} files checked by \\d{2} rules, \\d+ silenced\\."), summary());
    }

    @Test
    void mendingIsSavedAndTakenBackWithOneKey() throws Exception {
        spoilNote();
        window.pressLetter('m');
        window.waitUntil("the problem is gone", () -> !shows(3, RULE));
        assertTrue(note().contains("status=\"SEEN\""), note());
        window.pressLetter('z', SWT.MOD1);
        window.waitUntil("the problem is back", () -> shows(3, RULE));
        assertTrue(note().contains("status=\"HELD\""), note());
    }

    @Test
    void mendingWhatIsOpenInAnEditorIsLeftToBeSavedThere() throws Exception {
        spoilNote();
        window.press(SWT.F2);
        window.waitUntil("the editor is open", () -> editor() instanceof FormEditor);
        assertFalse(editor().isDirty());
        window.focus(table);
        window.pressLetter('m');
        window.waitUntil("the editor has something to save", () -> editor().isDirty());
        assertTrue(note().contains("status=\"HELD\""), note());
    }

    @Test
    void silencingNeedsAReasonAndCanBeShown() throws Exception {
        spoilNote();
        window.pressLetter('s');
        var reason = window.find("problems.reason", Text.class);
        var button = window.find("problems.silence", Button.class);
        assertFalse(button.isEnabled());
        reason.setText("Known from the other lorry");
        button.notifyListeners(SWT.Selection, null);
        window.waitUntil("the problem is gone", () -> !shows(3, RULE));
        assertTrue(Files.readString(library.file("shop.xmi")).contains("Known from the other lorry"));
        silenced(true);
        assertEquals("Silenced", table.getItem(indexOfRule()).getText(0));
    }

    @Test
    void enterOpensThePageAndF2TheEditor() throws Exception {
        spoilNote();
        window.press(SWT.CR);
        window.waitUntil("the page is open", () -> editor() instanceof PageEditor);
        window.focus(table);
        window.press(SWT.F2);
        window.waitUntil("the editor is open", () -> editor() instanceof FormEditor);
    }

    private void pictures() {
        var appearance = PlatformUI.getWorkbench().getService(Appearance.class);
        var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        var view = page.findViewReference(Ids.PROBLEMS_VIEW);
        var size = window.shell().getSize();
        window.screenshot("problems-light");
        appearance.choose(Appearance.Mode.DARK);
        window.shell().setSize(new Point(800, 600));
        page.toggleZoom(view);
        window.screenshot("problems-dark");
        page.toggleZoom(view);
        appearance.choose(Appearance.Mode.LIGHT);
        window.shell().setSize(size);
    }

    @Test
    void filterLeavesWhatHasEveryWord() throws Exception {
        Files.writeString(library.file(FILE), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<broken\n");
        spoilNote();
        int all = table.getItemCount();
        var rule = window.find("problems.rule", Text.class).getText();
        assertTrue(rule.contains("Otherwise: A fix that was only hoped for is taken for proved"), rule);
        pictures();
        window.find("problems.filter", Text.class).setText("HELD proof");
        assertTrue(all > 1 && table.getItemCount() == 1 && shows(3, RULE), summary());
    }
}
