// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Filters, what was probably meant, and what is offered where nothing is found. */
class NarrowingTest {

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

    @Test
    void filterByKeyboardLeavesAsManyRowsAsItSays() {
        search.search("teach in");
        window.press(SWT.TAB);
        var kind = window.find("search.filter.kind", Button.class);
        window.waitUntil("the filter has the cursor", kind::isFocusControl);
        window.pressLetter(' ');
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.CR);
        window.waitUntil("it is narrowed", () -> kind.getText().matches("&Kind: .+ \\d+ ▾")
                && window.has("search.filters.remove"));
        var counted = kind.getText().replaceAll("\\D", "");
        window.waitUntil("it is counted", () -> search.count().equals(counted + " found"));
        assertEquals(Long.parseLong(counted), SearchDriver.whole(search.hits()));
        window.screenshot("filtered");
        window.press(SWT.DEL);
        window.waitUntil("it is removed", () -> kind.getText().equals("&Kind ▾") && !window.has("search.filters.remove"));
    }

    @Test
    void escapeClearsTheFieldAndThenLeavesTheFilters() {
        search.search("teach in");
        window.press(SWT.TAB);
        window.pressLetter(' ');
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.ARROW_DOWN);
        window.press(SWT.CR);
        window.waitUntil("it is narrowed", () -> window.has("search.filters.remove"));
        window.focus(field);
        window.press(SWT.ESC);
        assertEquals("", field.getText());
        assertTrue(window.has("search.filters.remove"));
        window.press(SWT.ESC);
        assertFalse(window.has("search.filters.remove"));
    }

    @Test
    void misspeltWordIsOfferedAsItWasMeant() {
        search.search("learnig fails");
        var meant = window.find("search.meant", Link.class);
        assertEquals("Did you mean <a>learning fails</a>?", meant.getText());
        window.focus(meant);
        window.press(SWT.CR);
        window.waitUntil("the field has it", () -> field.getText().equals("learning fails"));
        window.waitUntil("the offer is gone", () -> !window.has("search.meant"));
    }

    @Test
    void exampleOfTheLibrarysOwnLeadsToHits() {
        var example = window.find("search.guide.example.0", Button.class);
        window.press(SWT.ARROW_DOWN);
        window.waitUntil("the example has the cursor", example::isFocusControl);
        var text = example.getText();
        window.press(SWT.CR);
        window.waitUntil("it is searched for", () -> field.getText().equals(text) && window.has("search.hits"));
    }

    @Test
    void nothingFoundSaysWhatToTry() {
        window.type("zzqqxx");
        window.waitUntil("it says so", () -> window.has("search.guide.note"));
        var guide = window.find("search.guide", Label.class).getText();
        assertTrue(guide.startsWith("Nothing found for 'zzqqxx'") && guide.contains("fewer words"), guide);
        assertEquals("0 found", search.count());
        window.screenshot("nothing-found");
    }
}
