// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.benchlore.model.Address;
import org.benchlore.search.Hit;
import org.benchlore.search.Passage;
import org.benchlore.store.Catalogue;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Palette;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A native table of hits; those that hold only some of the words stand below a heading, which cannot be selected. */
final class HitTable {

    private final Table table;
    private List<Hit> shown = List.of();
    private int last;
    private Consumer<Optional<Hit>> listener = hit -> { };

    /** Fills a parent, which must hold nothing else; {@code passages} gives what is known of a hit already. */
    HitTable(Composite parent, Function<Hit, Optional<Passage>> passages) {
        var layout = new TableColumnLayout();
        parent.setLayout(layout);
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, "search.hits");
        Keys.name(table, Messages.hitsName);
        layout.setColumnData(new TableColumn(table, SWT.NONE), new ColumnWeightData(1, 40, false));
        var palette = new Palette();
        new HitPainter(table, palette, passages);
        palette.onChange(table, table::redraw);
        table.addListener(SWT.Selection, event -> selectionMoved());
    }

    Table control() {
        return table;
    }

    void onOpen(Consumer<Address> opener) {
        table.addListener(SWT.DefaultSelection, event -> selected().ifPresent(hit -> opener.accept(hit.row().address())));
    }

    void onSelect(Consumer<Optional<Hit>> next) {
        listener = next;
    }

    private void selectionMoved() {
        int now = table.getSelectionIndex();
        if (now >= 0 && isHeading(now)) {
            int beside = now > last && now + 1 < table.getItemCount() || now == 0 ? now + 1 : now - 1;
            table.setSelection(beside);
            now = beside;
        }
        last = now;
        listener.accept(selected());
    }

    private boolean isHeading(int index) {
        return !(table.getItem(index).getData() instanceof HitLine);
    }

    Optional<Hit> selected() {
        var selection = table.getSelection();
        return selection.length == 0 || !(selection[0].getData() instanceof HitLine line) ? Optional.empty()
                : Optional.of(line.hit());
    }

    boolean isEmpty() {
        return shown.isEmpty();
    }

    /** Shows hits; the selection stays where it is in the same hits and while the cursor is in the list. */
    void show(List<Hit> hits, Catalogue catalogue) {
        var before = table.isFocusControl() ? selected().map(hit -> hit.row().path()) : Optional.<String>empty();
        if (isSame(hits)) {
            table.redraw();
            return;
        }
        shown = hits;
        table.setRedraw(false);
        table.removeAll();
        for (int i = 0; i < hits.size(); i++) {
            if (!hits.get(i).whole() && (i == 0 || hits.get(i - 1).whole())) {
                new TableItem(table, SWT.NONE).setText(i == 0 ? Messages.noneHoldsAll : Messages.onlySomeWords);
            }
            add(HitLine.of(hits.get(i), catalogue));
        }
        select(before);
        table.setRedraw(true);
        listener.accept(selected());
    }

    private boolean isSame(List<Hit> hits) {
        if (hits.size() != shown.size()) {
            return false;
        }
        for (int i = 0; i < hits.size(); i++) {
            if (hits.get(i).row() != shown.get(i).row() || hits.get(i).whole() != shown.get(i).whole()) {
                return false;
            }
        }
        return true;
    }

    private void add(HitLine line) {
        var item = new TableItem(table, SWT.NONE);
        item.setData(line);
        item.setText(line.spoken());
    }

    private void select(Optional<String> path) {
        int first = -1;
        for (int i = 0; i < table.getItemCount(); i++) {
            if (table.getItem(i).getData() instanceof HitLine line) {
                first = first < 0 ? i : first;
                if (path.filter(line.hit().row().path()::equals).isPresent()) {
                    first = i;
                    break;
                }
            }
        }
        table.setSelection(first);
        last = first;
        if (first > 0 && isHeading(first - 1)) {
            table.setTopIndex(first - 1);
        }
    }

    void focus() {
        table.setFocus();
        if (table.getSelectionCount() == 0) {
            select(Optional.empty());
        }
        listener.accept(selected());
    }
}
