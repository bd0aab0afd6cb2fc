// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Files;

import org.benchlore.model.Address;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.page.ElementInputFactory;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.SessionMemory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PageTest {

    private final WindowDriver window = new WindowDriver();
    private final IWorkbenchPage bench = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private LibraryCopy library;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        show(address("note-2025-learning-fails-on-a-fresh-install-k7m3"));
        waitForPage("Learning fails");
    }

    @AfterEach
    void close() throws Exception {
        library.close();
    }

    private static Address address(String id) {
        return LibraryCopy.session().current().orElseThrow().library().library().catalogue().byId(id).orElseThrow()
                .address();
    }

    private void show(Address address) {
        new PageOpener(bench, LibraryCopy.session()).open(address);
    }

    private StyledText page() {
        return window.find("page.text", StyledText.class);
    }

    private void waitForPage(String start) {
        window.waitUntil("the page begins with " + start, () -> page().getText().startsWith(start));
    }

    @Test
    void tabAndEnterFollowALinkAndAltLeftComesBack() {
        window.focus(page());
        page().setCaretOffset(0);
        window.press(SWT.TAB);
        assertEquals("Dravholm HL 26 hook-lift lorry", page().getSelectionText());
        window.press(SWT.CR);
        waitForPage("Dravholm HL 26");
        window.focus(page());
        window.press(SWT.ARROW_LEFT, SWT.ALT);
        waitForPage("Learning fails");
    }

    @Test
    void openingAnElementAgainBringsItsPageToTheFront() {
        var first = bench.getActiveEditor();
        show(address("dravholm-hl26"));
        waitForPage("Dravholm");
        show(address("note-2025-learning-fails-on-a-fresh-install-k7m3"));
        assertSame(first, bench.getActiveEditor());
    }

    @Test
    void changedFileIsShownAnewWithF5() throws Exception {
        var file = library.file(LibraryCopy.NOTE);
        Files.writeString(file, Files.readString(file).replace("bled twice", "bled three times"));
        window.focus(page());
        window.press(SWT.F5);
        window.waitUntil("the change is shown", () -> page().getText().contains("bled three times"));
    }

    @Test
    void removedElementLeavesAPlainMessage() throws Exception {
        Files.delete(library.file(LibraryCopy.NOTE));
        LibraryCopy.session().refresh();
        window.waitUntil("it says so", () -> page().getText().contains("no longer in the library"));
        window.screenshot("gone");
    }

    @Test
    void findOnThePageSelectsTheWords() {
        window.focus(page());
        window.pressLetter('f', SWT.CTRL);
        window.waitUntil("the field has the cursor", window.find("page.find", Text.class)::isFocusControl);
        window.type("bled twice");
        window.waitUntil("it is found", () -> page().getSelectionText().equals("bled twice"));
        window.press(SWT.ESC);
        window.waitUntil("the page has the cursor", page()::isFocusControl);
    }

    @Test
    void largerPagesHaveTallerLines() {
        var memory = PlatformUI.getWorkbench().getService(SessionMemory.class);
        int before = page().getLineHeight(0);
        memory.rememberZoom(200);
        window.waitUntil("lines are taller", () -> page().getLineHeight(0) > before);
        memory.rememberZoom(100);
    }

    @Test
    void inputComesBackFromWhatWasKept() {
        var input = (ElementInput) bench.getActiveEditor().getEditorInput();
        var memento = XMLMemento.createWriteRoot("input");
        input.saveState(memento);
        assertEquals(input, new ElementInputFactory().createElement(memento));
    }

    @Test
    void procedureShowsHazardsAndTables() {
        show(address("renew-pto-actuator"));
        waitForPage("Renew the engagement actuator");
        page().setTopIndex(page().getLineAtOffset(page().getText().indexOf("WARNING")) - 3);
        window.screenshot("procedure");
    }
}
