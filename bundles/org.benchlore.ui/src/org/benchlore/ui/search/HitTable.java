// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.search.Hit;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.look.Words;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A native table of hits. */
final class HitTable {

    private final Table table;
    private final Icons icons;

    /** Fills a parent, which must hold nothing else. */
    HitTable(Composite parent) {
        var layout = new TableColumnLayout();
        parent.setLayout(layout);
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        icons = new Icons(table);
        table.setHeaderVisible(true);
        column(layout, Messages.columnTitle, 46, 180);
        column(layout, Messages.columnKind, 10, 80);
        column(layout, Messages.columnMachine, 16, 80);
        column(layout, Messages.columnState, 8, 70);
        column(layout, Messages.columnWhy, 20, 80);
    }

    private void column(TableColumnLayout layout, String title, int weight, int least) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, least, true));
    }

    Table control() {
        return table;
    }

    void onOpen(Consumer<Address> opener) {
        table.addListener(SWT.DefaultSelection, event -> selected().ifPresent(hit -> opener.accept(hit.row().address())));
    }

    void onSelect(Consumer<Optional<Hit>> listener) {
        table.addListener(SWT.Selection, event -> listener.accept(selected()));
    }

    Optional<Hit> selected() {
        var selection = table.getSelection();
        return selection.length == 0 ? Optional.empty() : Optional.of((Hit) selection[0].getData());
    }

    void show(List<Hit> hits, Catalogue catalogue) {
        table.setRedraw(false);
        table.removeAll();
        hits.forEach(hit -> add(hit, catalogue));
        table.setRedraw(true);
    }

    private void add(Hit hit, Catalogue catalogue) {
        var row = hit.row();
        var item = new TableItem(table, SWT.NONE);
        item.setData(hit);
        item.setImage(icons.of(row.kind()));
        item.setText(new String[] {row.title(), Words.one(row.kind()), machines(row, catalogue),
            Words.state(row.status()), String.join(", ", hit.why())});
    }

    private static String machines(Row row, Catalogue catalogue) {
        return row.machines().stream().map(catalogue::at).flatMap(Optional::stream).map(Row::title).distinct()
                .collect(Collectors.joining(", "));
    }

    void focusFirst() {
        if (table.getItemCount() > 0) {
            table.setFocus();
            if (table.getSelectionCount() == 0) {
                table.setSelection(0);
            }
        }
    }
}
