// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.benchlore.ui.Ids;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SearchTest {

    private static final String STORY = "learning fails on a fresh install";
    private static final String STORY_NOTE = "Learning fails on a fresh install";

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private SearchDriver search;
    private Text field;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        search = new SearchDriver(window);
        field = search.field();
    }

    @AfterEach
    void close() throws Exception {
        library.close();
    }

    private static void waitForPage(WindowDriver window, String words) {
        window.waitUntil("the page with '" + words + "' is there", () -> window.has("page.text")
                && window.find("page.text", StyledText.class).getText().contains(words));
    }

    @Test
    void firstHitOfTheStoryIsItsNote() {
        var hits = search.search(STORY);
        assertTrue(hits.getItem(0).getText().startsWith(STORY_NOTE), hits.getItem(0).getText());
        window.screenshot("search");
    }

    @Test
    void hitIsSpokenWithKindStateYearAndMachine() {
        var hits = search.search(STORY);
        assertTrue(hits.getItem(0).getText().endsWith("Field note, seen, 2025, Dravholm HL 26 hook-lift lorry"),
                hits.getItem(0).getText());
    }

    @Test
    void enterInTheFieldOpensTheFirstHit() {
        search.search(STORY);
        window.press(SWT.CR);
        waitForPage(window, "New pack in, bled twice");
        assertTrue(window.find("page.text", StyledText.class).getText().contains("not for use on a real machine"));
        window.screenshot("note");
    }

    @Test
    void enterRightBehindTheLastLetterWaitsForTheAnswer() {
        window.type(STORY);
        window.press(SWT.CR);
        waitForPage(window, "New pack in, bled twice");
    }

    @Test
    void enterInTheListOpensAndEscapeComesBackToTheSameHit() {
        var hits = search.search("teach in");
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the cursor is in the hits", hits::isFocusControl);
        window.press(SWT.ARROW_DOWN);
        var chosen = hits.getSelectionIndex();
        assertEquals(1, chosen);
        window.press(SWT.CR);
        window.waitUntil("the page has the cursor", () -> window.has("page.text")
                && window.find("page.text", StyledText.class).isFocusControl());
        window.press(SWT.ESC);
        window.waitUntil("the list has the cursor", hits::isFocusControl);
        assertEquals(chosen, hits.getSelectionIndex());
    }

    @Test
    void downGoesToTheHitsAndEscapeComesBack() {
        var hits = search.search(STORY);
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the cursor is in the hits", hits::isFocusControl);
        assertEquals(0, hits.getSelectionIndex());
        window.press(SWT.ESC);
        window.waitUntil("the cursor is in the field", field::isFocusControl);
    }

    @Test
    void previewFollowsTheSelection() {
        var hits = search.search(STORY);
        window.waitUntil("the first hit is seen", () -> search.preview().getText().startsWith(STORY_NOTE));
        assertTrue(search.preview().getText().contains("in the title: "), search.preview().getText());
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.ARROW_DOWN);
        var next = hits.getSelection()[0].getText();
        window.waitUntil("the second hit is seen", () -> next.startsWith(search.preview().getLine(0).strip() + ","));
    }

    @Test
    void whatBelongsToAHitOpensFromThePreview() {
        search.search(STORY);
        window.waitUntil("the preview is there", () -> search.preview().getText().contains("Belongs to it"));
        window.focus(search.preview());
        search.preview().setCaretOffset(0);
        window.press(SWT.TAB);
        var title = search.preview().getSelectionText();
        assertFalse(title.isBlank());
        window.press(SWT.CR);
        waitForPage(window, title);
    }

    @Test
    void procedureIsNotReadInThePreview() {
        var hits = search.search("renew");
        window.press(SWT.ARROW_DOWN);
        for (int i = 0; i < 10 && !hits.getSelection()[0].getText().contains(", Procedure"); i++) {
            window.press(SWT.ARROW_DOWN);
        }
        window.waitUntil("it says so", () -> search.preview().getText().contains("Open it for the hazards and steps."));
    }

    @Test
    void onlyWholeHitsStandAboveTheHeadingAndItCannotBeSelected() {
        var hits = search.search(STORY);
        int heading = (int) SearchDriver.whole(hits);
        assertTrue(hits.getItemCount() > heading + 1, "there are no others");
        window.press(SWT.ARROW_DOWN);
        for (int i = 0; i < heading; i++) {
            window.press(SWT.ARROW_DOWN);
        }
        assertEquals(heading + 1, hits.getSelectionIndex());
        window.press(SWT.ARROW_UP);
        assertEquals(heading - 1, hits.getSelectionIndex());
    }

    @Test
    void shortcutGoesToTheFieldFromEveryViewAndPage() throws Exception {
        search.search(STORY);
        window.press(SWT.CR);
        waitForPage(window, "New pack in, bled twice");
        var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        page.showView(Ids.PROBLEMS_VIEW);
        shortcutFrom("problems.table");
        page.showView(Ids.LOG_VIEW);
        shortcutFrom("log.table");
        shortcutFrom("tree.filter");
        shortcutFrom("page.text");
        shortcutFrom("search.preview");
    }

    private void shortcutFrom(String id) {
        window.focus(window.find(id, Control.class));
        window.pressLetter('f', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("the cursor is in the field, from " + id, field::isFocusControl);
    }

    @Test
    void fastTypingEndsWithTheHitsOfTheLastText() {
        window.type("actuator");
        for (int i = 0; i < 8; i++) {
            window.press(SWT.BS);
        }
        var hits = search.search("sweeper belt squeals");
        var first = hits.getItem(0).getText();
        assertTrue(first.contains("squeal"), first);
        window.workFor(300);
        assertEquals(first, hits.getItem(0).getText());
    }
}
