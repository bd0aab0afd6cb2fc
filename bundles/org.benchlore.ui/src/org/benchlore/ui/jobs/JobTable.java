// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Kind;
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

/** The list of jobs. What is selected stays selected. */
final class JobTable {

    private final Composite frame;
    private final Table table;
    private final Icons icons;
    private List<JobLine> lines = List.of();

    JobTable(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.setData(Ids.WIDGET_ID, "jobs.table");
        Keys.name(table, Messages.tableName);
        icons = new Icons(table);
        column(layout, Messages.columnJob, 26, 150);
        column(layout, Messages.columnUnit, 16, 110);
        column(layout, Messages.columnState, 13, 140);
        column(layout, Messages.columnOpened, 7, 90);
        column(layout, Messages.columnWaits, 17, 100);
        column(layout, Messages.columnNext, 21, 140);
    }

    private void column(TableColumnLayout layout, String title, int weight, int least) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, least, true));
    }

    Composite control() {
        return frame;
    }

    Table table() {
        return table;
    }

    void onOpen(Consumer<JobLine> opener) {
        table.addListener(SWT.DefaultSelection, event -> selected().ifPresent(opener));
    }

    /** A letter alone does something. */
    void on(char letter, Runnable action) {
        table.addListener(SWT.KeyDown, event -> {
            if (Character.toLowerCase(event.character) == letter && (event.stateMask & SWT.MODIFIER_MASK & ~SWT.MOD2) == 0) {
                event.doit = false;
                action.run();
            }
        });
    }

    Optional<JobLine> selected() {
        int index = table.getSelectionIndex();
        return index < 0 || index >= lines.size() ? Optional.empty() : Optional.of(lines.get(index));
    }

    void show(List<JobLine> now) {
        var before = selected().map(line -> line.row().address());
        int place = Math.max(0, table.getSelectionIndex());
        lines = now;
        table.setRedraw(false);
        table.removeAll();
        now.forEach(this::add);
        table.setRedraw(true);
        if (!now.isEmpty()) {
            int at = before.map(address -> now.stream().map(line -> line.row().address()).toList().indexOf(address)).orElse(0);
            table.setSelection(at < 0 ? Math.min(place, now.size() - 1) : at);
        }
    }

    private void add(JobLine line) {
        var item = new TableItem(table, SWT.NONE);
        item.setImage(icons.of(Kind.JOB));
        item.setText(new String[] {line.row().title(), line.unit(), line.state(), line.opened(), line.waits(), line.next()});
    }
}
