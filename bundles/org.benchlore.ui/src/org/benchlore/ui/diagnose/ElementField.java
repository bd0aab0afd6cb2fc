// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import org.benchlore.model.Kind;
import org.benchlore.search.Titles;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Words;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Names one element by letters of its title: what fits stands below the field, arrows choose, Enter takes, Escape closes. */
final class ElementField {

    private static final int MOST_ROWS = 6;
    private static final int WIDTH = 100;
    private static final int EDGE = 6;

    private final Supplier<Optional<Catalogue>> catalogue;
    private final Set<Kind> kinds;
    private final Runnable changed;
    private final Runnable relayout;
    private final Text text;
    private final Table table;
    private Optional<Row> chosen = Optional.empty();
    private boolean isSetting;

    ElementField(Composite parent, String id, Entry entry, Set<Kind> kinds, Supplier<Optional<Catalogue>> catalogue,
            Entry.Follow follow) {
        this.catalogue = catalogue;
        this.kinds = kinds;
        this.changed = follow.changed();
        this.relayout = follow.relayout();
        new Label(parent, SWT.NONE).setText(entry.label());
        text = new Text(parent, SWT.BORDER);
        text.setData(Ids.WIDGET_ID, id);
        text.setMessage(entry.hint());
        Keys.name(text, entry.name());
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(text);
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, id + ".choices");
        Keys.name(table, NLS.bind(Messages.choices, entry.name()));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDTH, 0).exclude(true).applyTo(table);
        table.setVisible(false);
        listen();
    }

    private void listen() {
        text.addModifyListener(event -> typed());
        text.addListener(SWT.KeyDown, this::pressed);
        text.addListener(SWT.Traverse, this::leaving);
        text.addListener(SWT.FocusOut, event -> text.getDisplay().asyncExec(this::left));
        table.addListener(SWT.FocusOut, event -> text.getDisplay().asyncExec(this::left));
        table.addListener(SWT.MouseUp, event -> take());
        table.addListener(SWT.DefaultSelection, event -> take());
        Keys.on(table, SWT.ESC, () -> text.setFocus());
    }

    private void typed() {
        if (!isSetting) {
            chosen = Optional.empty();
            show(text.getText().isBlank() || !text.isFocusControl() ? List.of() : find(text.getText()));
            changed.run();
        }
    }

    private List<Row> find(String words) {
        return catalogue.get().map(all -> Titles.find(all, words, Integer.MAX_VALUE).stream()
                .filter(row -> kinds.contains(row.kind())).toList()).orElse(List.of());
    }

    private void pressed(Event event) {
        boolean isPlain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        boolean opens = event.keyCode == ' ' && (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1
                || event.keyCode == SWT.ARROW_DOWN && isPlain && !isOpen();
        if (opens) {
            event.doit = false;
            show(find(text.getText()));
        } else if (isOpen() && isPlain) {
            event.doit = !isUsed(event.keyCode);
        }
    }

    /** Tab takes what is meant and goes on to the next field; where several may be meant, it goes to them. */
    private void leaving(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT && isOpen()) {
            var meant = row();
            if (meant.isPresent()) {
                set(meant);
            }
        }
    }

    private boolean isUsed(int key) {
        switch (key) {
            case SWT.ARROW_DOWN -> move(1);
            case SWT.ARROW_UP -> move(-1);
            case SWT.CR, SWT.KEYPAD_CR -> take();
            case SWT.ESC -> show(List.of());
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean isOpen() {
        return table.getItemCount() > 0;
    }

    private void move(int by) {
        table.setSelection(Math.floorMod(table.getSelectionIndex() + by, table.getItemCount()));
        table.showSelection();
    }

    private void take() {
        if (table.getSelectionCount() > 0) {
            var row = (Row) table.getSelection()[0].getData();
            text.setFocus();
            set(Optional.of(row));
            text.selectAll();
            changed.run();
        }
    }

    private void left() {
        if (!text.isDisposed() && isOpen() && !text.isFocusControl() && !table.isFocusControl()) {
            show(List.of());
        }
    }

    private void show(List<Row> rows) {
        int before = table.getItemCount();
        table.removeAll();
        for (var row : rows) {
            var item = new TableItem(table, SWT.NONE);
            item.setText(kinds.size() > 1 ? row.title() + " (" + Words.one(row.kind()) + ")" : row.title());
            item.setData(row);
        }
        table.setSelection(0);
        var data = (GridData) table.getLayoutData();
        data.exclude = rows.isEmpty();
        data.heightHint = Math.min(rows.size(), MOST_ROWS) * table.getItemHeight() + EDGE;
        table.setVisible(!rows.isEmpty());
        if (before != rows.size()) {
            relayout.run();
        }
    }

    /** Names an element, or none, without telling of the change. */
    void set(Optional<Row> row) {
        isSetting = true;
        chosen = row;
        text.setText(row.map(Row::title).orElse(""));
        isSetting = false;
        show(List.of());
    }

    /** The element meant: the one that was chosen, or the only one that can be meant by what stands here. */
    Optional<Row> row() {
        if (chosen.isPresent() || words().isEmpty()) {
            return chosen;
        }
        var fitting = find(words());
        var same = fitting.stream().filter(row -> row.id().equalsIgnoreCase(words())
                || row.title().equalsIgnoreCase(words())).toList();
        return same.size() == 1 ? Optional.of(same.get(0))
                : fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    String words() {
        return text.getText().strip();
    }

    void focus() {
        text.setFocus();
    }
}
