// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SearchTest {

    private static final String STORY = "learning fails on a fresh install";
    private static final String STORY_NOTE = "Learning fails on a fresh install";

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Text field;
    private Table hits;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        field = window.find("search.field", Text.class);
        hits = window.find("search.hits", Table.class);
        field.setText("");
        window.focus(field);
    }

    @AfterEach
    void close() throws Exception {
        library.close();
    }

    private void typeStory() {
        window.type(STORY);
        window.waitUntil("there are hits", () -> field.getText().equals(STORY) && hits.getItemCount() > 0);
    }

    @Test
    void firstHitOfTheStoryIsItsNote() {
        typeStory();
        assertTrue(hits.getItem(0).getText().startsWith(STORY_NOTE), hits.getItem(0).getText());
        window.screenshot("search");
    }

    @Test
    void enterInTheFieldOpensTheFirstHit() {
        typeStory();
        window.press(SWT.CR);
        var page = window.find("page.text", StyledText.class);
        window.waitUntil("the page is there", () -> page.getText().contains("New pack in, bled twice"));
        assertTrue(page.getText().contains("not for use on a real machine"));
        window.screenshot("note");
    }

    @Test
    void downGoesToTheHitsAndEscapeComesBack() {
        typeStory();
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the cursor is in the hits", hits::isFocusControl);
        assertEquals(0, hits.getSelectionIndex());
        window.press(SWT.ESC);
        window.waitUntil("the cursor is in the field", field::isFocusControl);
    }

    @Test
    void shortcutGoesToTheFieldFromTheTree() {
        window.focus(window.find("tree.filter", Control.class));
        window.pressLetter('f', SWT.CTRL, SWT.SHIFT);
        window.waitUntil("the cursor is in the field", field::isFocusControl);
    }

    @Test
    void nothingFoundSaysWhatToTry() {
        window.type("zzqqxx");
        var preview = window.find("search.preview", StyledText.class);
        window.waitUntil("it says so", () -> preview.getText().startsWith("Nothing found for 'zzqqxx'"));
        assertTrue(preview.getText().contains("fewer words"));
        assertEquals("0 found", window.find("search.count", Label.class).getText());
    }
}
