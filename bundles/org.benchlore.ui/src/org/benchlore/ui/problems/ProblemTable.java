// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The list of problems. What is selected stays selected when the list changes, else its neighbour is. */
final class ProblemTable {

    private final Composite frame;
    private final Table table;
    private final Icons icons;
    private List<ProblemRow> rows = List.of();

    ProblemTable(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.setData(Ids.WIDGET_ID, "problems.table");
        Keys.name(table, Messages.tableName);
        icons = new Icons(table);
        column(layout, Messages.columnSort, 10, 100);
        column(layout, Messages.columnElement, 28, 150);
        column(layout, Messages.columnSentence, 46, 260);
        column(layout, Messages.columnRule, 16, 120);
    }

    private void column(TableColumnLayout layout, String title, int weight, int least) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, least, true));
    }

    private void add(ProblemRow row) {
        var item = new TableItem(table, SWT.NONE);
        item.setImage(icons.named(row.sort().icon()));
        item.setText(new String[] {row.sort().word(), row.element(), row.sentence(), row.rule()});
    }

    Composite control() {
        return frame;
    }

    Table table() {
        return table;
    }

    void onSelect(Runnable listener) {
        table.addListener(SWT.Selection, event -> listener.run());
    }

    void onOpen(Consumer<ProblemRow> opener) {
        table.addListener(SWT.DefaultSelection, event -> selected().ifPresent(opener));
    }

    /** A letter alone does something to what is selected. */
    void on(char letter, Consumer<ProblemRow> action) {
        table.addListener(SWT.KeyDown, event -> {
            if (Character.toLowerCase(event.character) == letter
                    && (event.stateMask & SWT.MODIFIER_MASK & ~SWT.MOD2) == 0) {
                event.doit = false;
                selected().ifPresent(action);
            }
        });
    }

    Optional<ProblemRow> selected() {
        int index = table.getSelectionIndex();
        return index < 0 || index >= rows.size() ? Optional.empty() : Optional.of(rows.get(index));
    }

    void show(List<ProblemRow> now) {
        var before = selected();
        int place = Math.max(0, table.getSelectionIndex());
        rows = now;
        table.setRedraw(false);
        table.removeAll();
        now.forEach(this::add);
        table.setRedraw(true);
        if (!now.isEmpty()) {
            table.setSelection(before.map(row -> indexOf(row, place)).orElse(0));
        }
    }

    private int indexOf(ProblemRow row, int place) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).isSameAs(row)) {
                return i;
            }
        }
        return Math.min(place, rows.size() - 1);
    }
}
