// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.function.BiConsumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** A field over one column of a table: Enter, F2, a digit or a double click opens it, Enter takes it, Escape leaves it. */
final class FigureEditor {

    private final Table table;
    private final int column;
    private final BiConsumer<Integer, String> entered;
    private final TableEditor place;
    private Text field;

    FigureEditor(Table table, int column, BiConsumer<Integer, String> entered) {
        this.table = table;
        this.column = column;
        this.entered = entered;
        this.place = new TableEditor(table);
        place.grabHorizontal = true;
        table.addListener(SWT.KeyDown, this::pressed);
        table.addListener(SWT.MouseDoubleClick, event -> {
            if (table.getItem(new Point(event.x, event.y)) != null) {
                open("");
            }
        });
    }

    private void pressed(Event event) {
        boolean isPlain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        if (isPlain && (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.keyCode == SWT.F2)) {
            event.doit = false;
            open("");
        } else if (isPlain && Character.isDigit(event.character)) {
            event.doit = false;
            open(String.valueOf(event.character));
        }
    }

    private void open(String typed) {
        if (field != null || table.getSelectionIndex() < 0) {
            return;
        }
        var item = table.getItem(table.getSelectionIndex());
        int row = table.getSelectionIndex();
        field = new Text(table, SWT.BORDER);
        field.setData(Ids.WIDGET_ID, "adding.figureField");
        Keys.name(field, item.getText(0));
        field.setText(typed.isEmpty() ? item.getText(column) : typed);
        place.minimumHeight = field.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        place.setEditor(field, item, column);
        field.setFocus();
        field.setSelection(typed.isEmpty() ? 0 : typed.length(), field.getText().length());
        field.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN || event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                close(row, event.detail == SWT.TRAVERSE_RETURN, true);
            }
        });
        field.addListener(SWT.FocusOut, event -> close(row, true, false));
    }

    private void close(int row, boolean takes, boolean toTable) {
        if (field == null) {
            return;
        }
        var closed = field;
        field = null;
        var text = closed.getText();
        boolean isChanged = !text.equals(table.getItem(row).getText(column));
        place.setEditor(null);
        closed.dispose();
        if (toTable) {
            table.setFocus();
        }
        if (takes && isChanged) {
            entered.accept(row, text);
        }
    }
}
