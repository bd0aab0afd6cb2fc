// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Tables of the dialogs: lines to read, as wide as their words. */
final class LineTable {

    private static final int WIDEST = 300;

    private LineTable() {
    }

    static Table of(Composite area, String id, String name, String... columns) {
        var table = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setData(Ids.WIDGET_ID, id);
        table.setHeaderVisible(true);
        Keys.name(table, name);
        for (var column : columns) {
            new TableColumn(table, SWT.NONE).setText(column);
        }
        return table;
    }

    static void pack(Table table) {
        for (var column : table.getColumns()) {
            column.pack();
            column.setWidth(Math.min(WIDEST, column.getWidth()));
        }
    }
}
