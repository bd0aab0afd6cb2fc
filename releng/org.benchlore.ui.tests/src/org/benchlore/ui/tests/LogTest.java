// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.log.LogBuffer;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class LogTest {

    private final WindowDriver window = new WindowDriver();
    private final LogBuffer buffer = PlatformUI.getWorkbench().getService(LogBuffer.class);

    private Table table() throws Exception {
        PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(Ids.LOG_VIEW);
        return window.find("log.table", Table.class);
    }

    @Test
    void recordOfTheHeadlessRoomsIsShownFirst() throws Exception {
        var table = table();
        System.getLogger("org.benchlore.store").log(System.Logger.Level.WARNING, "The disk is slow");
        window.waitUntil("it is shown",
                () -> table.getItemCount() > 0 && "The disk is slow".equals(table.getItem(0).getText(1)));
    }

    @Test
    void failureIsLoggedOnce() throws Exception {
        table();
        Failures.log("A test made this up", new IllegalStateException("gone"));
        window.workFor(300);
        assertEquals(1, buffer.records().stream().filter(record -> record.text().equals("A test made this up")).count());
    }
}
