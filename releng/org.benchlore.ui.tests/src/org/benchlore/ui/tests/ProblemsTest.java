// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;

import org.benchlore.ui.Ids;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProblemsTest {

    private static final String FILE = "parts/pto-actuator.xmi";

    private final WindowDriver window = new WindowDriver();
    private LibraryCopy library;
    private Table table;

    @BeforeEach
    void open() throws Exception {
        library = LibraryCopy.open(window);
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(Ids.PROBLEMS_VIEW);
        table = window.find("problems.table", Table.class);
    }

    @AfterEach
    void close() throws Exception {
        library.close();
    }

    private boolean shows(String start) {
        for (var item : table.getItems()) {
            if (item.getText().startsWith(start)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void corruptFileIsListedWithItsLineAndReason() throws Exception {
        Files.writeString(library.file(FILE), "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<broken\n");
        LibraryCopy.session().refresh();
        window.waitUntil("the file is listed", () -> shows(FILE + ":"));
        assertTrue(table.getItem(0).getText(1).length() > 10, table.getItem(0).getText(1));
        window.screenshot("problems");
    }

    @Test
    void demonstrationLibraryHasNoProblem() {
        window.workFor(200);
        assertEquals(0, table.getItemCount());
    }
}
