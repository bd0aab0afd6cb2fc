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

class TitlesTest {

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Text field;
    private Table table;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        window.focus(window.find("tree.filter", Control.class));
        window.pressLetter('t', SWT.CTRL);
        field = window.find("titles.field", Text.class);
        table = window.find("titles.table", Table.class);
        window.waitUntil("the field has the cursor", field::isFocusControl);
    }

    @AfterEach
    void close() throws Exception {
        if (!field.isDisposed()) {
            field.getShell().close();
        }
        library.close();
    }

    @Test
    void beginningsOfWordsFindATitleAndEnterOpensIt() {
        window.type("act ren");
        window.waitUntil("it is found", () -> table.getItemCount() == 1);
        assertEquals("Renew the engagement actuator of the power take-off", table.getItem(0).getText());
        assertEquals("Procedure", table.getItem(0).getText(1));
        window.screenshot("titles");
        window.press(SWT.CR);
        window.waitUntil("its page is there", () -> window.has("page.text")
                && window.find("page.text", StyledText.class).getText().startsWith("Renew the engagement actuator"));
        assertTrue(field.isDisposed());
    }

    @Test
    void arrowsChooseWhileTheFieldKeepsTheCursor() {
        window.type("renew");
        window.waitUntil("some are found", () -> table.getItemCount() > 1 && table.getItem(0).getText().startsWith("Renew"));
        window.press(SWT.ARROW_DOWN);
        assertEquals(1, table.getSelectionIndex());
        window.press(SWT.ARROW_UP);
        window.press(SWT.ARROW_UP);
        assertEquals(table.getItemCount() - 1, table.getSelectionIndex());
        assertTrue(field.isFocusControl());
    }

    @Test
    void escapeClosesIt() {
        window.press(SWT.ESC);
        window.waitUntil("it is closed", field::isDisposed);
    }

    @Test
    void noSuchTitleIsSaid() {
        window.type("zzqq");
        window.waitUntil("it says so", () -> window.find("titles.none", Label.class).getText().startsWith("No title fits"));
        window.press(SWT.CR);
        assertTrue(!field.isDisposed());
    }
}
