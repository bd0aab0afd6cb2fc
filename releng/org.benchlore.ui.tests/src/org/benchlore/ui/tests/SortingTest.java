// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.workshop.NewNote;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The lead sorts by one key each and takes the last one back. */
class SortingTest {

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Row note;
    private Tree tree;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        var opened = LibraryCopy.session().current().orElseThrow().library();
        note = new NewNote(opened, Clock.systemDefaultZone(), new Random(7)).write("wibble valve sticks when cold",
                Optional.of("dravholm-hl26"), Optional.empty());
        show();
        tree = window.find("desk.tree", Tree.class);
        window.waitUntil("the note waits", () -> titles(0).contains(note.title()));
        tree.setSelection(item(0, note.title()));
        window.focus(tree);
    }

    @AfterEach
    void close() throws Exception {
        var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        page.hideView(page.findView(Ids.DESK_VIEW));
        library.close();
    }

    private static void show() throws PartInitException {
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(Ids.DESK_VIEW);
    }

    @Test
    void oneKeyGoesToTheDesk() {
        var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        page.hideView(page.findView(Ids.DESK_VIEW));
        window.activate();
        window.pressLetter('d', SWT.MOD1, SWT.MOD2);
        window.waitUntil("the desk is open", () -> page.findView(Ids.DESK_VIEW) != null);
    }

    private List<String> titles(int section) {
        return tree.getItemCount() <= section ? List.of()
                : Arrays.stream(tree.getItem(section).getItems()).map(item -> item.getText(0)).toList();
    }

    private TreeItem item(int section, String title) {
        return Arrays.stream(tree.getItem(section).getItems()).filter(item -> item.getText(0).equals(title)).findFirst()
                .orElseThrow();
    }

    private String status() {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId(note.id())
                .orElseThrow().status();
    }

    private void waitForStatus(String status) {
        window.waitUntil("it is " + status, () -> status.equals(status()));
    }

    @Test
    void oneKeySortsANoteAndAnotherTakesItBack() {
        window.pressLetter('s');
        waitForStatus("SUSPECTED");
        window.waitUntil("it waits no longer", () -> !titles(0).contains(note.title()));
        window.screenshot("sorting");
        window.pressLetter('z');
        waitForStatus("UNSORTED");
        window.waitUntil("it waits again", () -> titles(0).contains(note.title()));
    }

    @Test
    void whatAStatusNeedsIsSaid() {
        window.pressLetter('e');
        var said = window.find("desk.said", Label.class);
        window.waitUntil("it says what is missing", () -> said.getText().contains("Write what was found"));
        assertEquals("UNSORTED", status());
    }

    @Test
    void whyItIsRuledOutIsAskedAndKept() {
        window.pressLetter('r');
        var answer = window.find("desk.answer", Text.class);
        window.waitUntil("the question has the cursor", answer::isFocusControl);
        window.type("was the plug");
        window.press(SWT.CR);
        waitForStatus("RULED_OUT");
        assertTrue(LibraryCopy.session().current().orElseThrow().library().search()
                .find(org.benchlore.search.Query.of("was the plug wibble")).hits().stream()
                .anyMatch(hit -> hit.row().id().equals(note.id())));
    }

    @Test
    void seenAgainCountsOneMore() {
        window.pressLetter('a');
        var said = window.find("desk.said", Label.class);
        window.waitUntil("it says so", () -> said.getText().contains("seen once more"));
        var element = (org.benchlore.model.FieldNote) LibraryCopy.session().current().orElseThrow().library().library()
                .top(note.id()).orElseThrow();
        assertEquals(2, element.getSeen().getCount());
    }
}
