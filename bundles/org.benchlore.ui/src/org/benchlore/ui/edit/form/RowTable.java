// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Rows of text with the keys of every list: Delete removes, Alt with an arrow moves. As high as what it holds. */
final class RowTable {

    private static final int MOST_ROWS = 6;
    private static final int WIDTH = 100;
    private static final int EDGE = 6;

    /** Moves a row. */
    interface Mover {
        void move(int from, int to);
    }

    private final Composite frame;
    private final Table table;

    RowTable(Composite parent, String id, String name) {
        frame = new Composite(parent, SWT.NONE);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, id);
        Keys.name(table, name);
        layout.setColumnData(new TableColumn(table, SWT.NONE), new ColumnWeightData(1, WIDTH, false));
        int columns = parent.getLayout() instanceof GridLayout grid ? grid.numColumns : 1;
        GridDataFactory.fillDefaults().span(columns, 1).grab(true, false).hint(WIDTH, 0).exclude(true).applyTo(frame);
        frame.setVisible(false);
    }

    Table table() {
        return table;
    }

    void onRemove(IntConsumer action) {
        Keys.on(table, SWT.DEL, () -> index().ifPresent(action::accept));
    }

    void onMove(Mover mover) {
        table.addListener(SWT.KeyDown, event -> move(event, mover));
    }

    private void move(Event event, Mover mover) {
        int step = event.keyCode == SWT.ARROW_UP ? -1 : event.keyCode == SWT.ARROW_DOWN ? 1 : 0;
        if (step != 0 && (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT) {
            event.doit = false;
            index().map(at -> at + step).filter(to -> to >= 0 && to < table.getItemCount())
                    .ifPresent(to -> mover.move(to - step, to));
        }
    }

    Optional<Integer> index() {
        return table.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(table.getSelectionIndex());
    }

    void select(int index) {
        table.setSelection(index);
    }

    /** Shows rows; tells whether the form must be laid out anew. The selection stays at its place. */
    boolean show(List<String> lines) {
        int before = table.getItemCount();
        int selected = table.getSelectionIndex();
        while (table.getItemCount() > lines.size()) {
            table.remove(table.getItemCount() - 1);
        }
        for (int i = 0; i < lines.size(); i++) {
            var item = i < table.getItemCount() ? table.getItem(i) : new TableItem(table, SWT.NONE);
            if (!item.getText().equals(lines.get(i))) {
                item.setText(lines.get(i));
            }
        }
        if (selected >= lines.size() && !lines.isEmpty()) {
            table.setSelection(lines.size() - 1);
        }
        return before != lines.size() && resize(lines.size());
    }

    private boolean resize(int rows) {
        var data = (GridData) frame.getLayoutData();
        data.exclude = rows == 0;
        data.heightHint = Math.min(rows, MOST_ROWS) * table.getItemHeight() + EDGE;
        frame.setVisible(rows > 0);
        return true;
    }
}
