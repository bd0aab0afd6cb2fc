// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Lines under a name, as high as what it holds, hidden with its name while it holds nothing. */
final class LineTable {

    private static final int MOST_ROWS = 9;
    private static final int EDGE = 6;

    private final Label name;
    private final Table table;
    private List<Line> lines = List.of();

    LineTable(Composite parent, String id, String title, int style) {
        name = new Label(parent, SWT.NONE);
        name.setText(title);
        GridDataFactory.fillDefaults().indent(0, 4).exclude(true).applyTo(name);
        table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | style);
        table.setData(Ids.WIDGET_ID, id);
        Keys.name(table, title.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(100, 0).exclude(true).applyTo(table);
        name.setVisible(false);
        table.setVisible(false);
        table.addListener(SWT.MouseMove, event -> whole(table.getItem(new Point(event.x, event.y))));
    }

    /** A title may be cut off in a narrow window. */
    private void whole(TableItem item) {
        table.setToolTipText(item == null ? null : item.getText().replace("&", "&&"));
    }

    void onTick(BiConsumer<String, Boolean> action) {
        table.addListener(SWT.Selection, event -> {
            if (event.detail == SWT.CHECK && event.item instanceof TableItem item) {
                action.accept(lines.get(table.indexOf(item)).id(), item.getChecked());
            }
        });
    }

    void onRemove(Consumer<String> action) {
        Keys.on(table, SWT.DEL, () -> {
            if (table.getSelectionIndex() >= 0) {
                action.accept(lines.get(table.getSelectionIndex()).id());
            }
        });
    }

    /** Shows lines; the selection stays at its place. Tells whether that takes more or less room than before. */
    boolean show(List<Line> next, List<String> ticked) {
        boolean resized = next.size() != lines.size();
        lines = new ArrayList<>(next);
        while (table.getItemCount() > next.size()) {
            table.remove(table.getItemCount() - 1);
        }
        for (int i = 0; i < next.size(); i++) {
            var item = i < table.getItemCount() ? table.getItem(i) : new TableItem(table, SWT.NONE);
            item.setText(next.get(i).title());
            if ((table.getStyle() & SWT.CHECK) != 0) {
                item.setChecked(ticked.contains(next.get(i).id()));
            }
        }
        resize();
        return resized;
    }

    private void resize() {
        boolean isEmpty = lines.isEmpty();
        ((GridData) name.getLayoutData()).exclude = isEmpty;
        var data = (GridData) table.getLayoutData();
        data.exclude = isEmpty;
        data.heightHint = Math.min(MOST_ROWS, lines.size()) * table.getItemHeight() + EDGE;
        name.setVisible(!isEmpty);
        table.setVisible(!isEmpty);
    }
}
