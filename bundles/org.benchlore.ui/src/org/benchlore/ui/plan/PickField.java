// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.look.Icons;
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

/** A field that finds by title while one types, its list below it: arrows choose, Enter takes, Escape closes. */
public final class PickField {

    private static final int TYPING_PAUSE = 30;
    private static final int MOST_ROWS = 7;
    private static final int EDGE = 6;

    /**
     * What stands before and in the field.
     *
     * @param label the label before it
     * @param hint what stands in it while it is empty
     */
    public record Names(String label, String hint) {
    }

    /** Letters that were typed; each time an object of its own. */
    private record Typed(String text) {
    }

    private final Text text;
    private final Table table;
    private final Icons icons;
    private final Runnable relayout;
    private final Consumer<Row> taken;
    private final boolean keepsTitle;
    private final LatestJob<Typed, List<Row>> job;
    private String standing = "";
    private boolean isFilling;
    private boolean isAsked;
    private boolean takesNext;

    /**
     * Makes it.
     *
     * @param parent gets the label, the field and the list below it, one below the other
     * @param id the id of the field for tests
     * @param names label and hint
     * @param keepsTitle whether the title of what was taken stays in the field
     * @param finder is called beside the window's thread
     * @param relayout is called when the list opens or closes
     * @param taken is told what is taken
     */
    public PickField(Composite parent, String id, Names names, boolean keepsTitle, Function<String, List<Row>> finder,
            Runnable relayout, Consumer<Row> taken) {
        this.keepsTitle = keepsTitle;
        this.relayout = relayout;
        this.taken = taken;
        var name = names.label();
        new Label(parent, SWT.NONE).setText(name);
        text = field(parent, id, names);
        table = list(parent, id + ".choices", NLS.bind(Messages.choices, name.replace("&", "")));
        icons = new Icons(table);
        job = new LatestJob<>(Messages.finding, typed -> finder.apply(typed.text()), new WindowThread(text),
                (typed, rows) -> show(rows));
        listen();
    }

    private static Text field(Composite parent, String id, Names names) {
        var text = new Text(parent, SWT.SEARCH | SWT.ICON_CANCEL);
        text.setMessage(names.hint());
        text.setData(Ids.WIDGET_ID, id);
        Keys.name(text, names.label().replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private static Table list(Composite parent, String id, String name) {
        var table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, id);
        Keys.name(table, name);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, 0).exclude(true).applyTo(table);
        table.setVisible(false);
        return table;
    }

    private void listen() {
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.KeyDown, this::pressed);
        text.addListener(SWT.Traverse, this::traversed);
        text.addListener(SWT.FocusOut, event -> set(standing));
        table.addListener(SWT.MouseUp, event -> take());
        table.addListener(SWT.DefaultSelection, event -> take());
        Keys.on(table, SWT.ESC, () -> {
            close();
            text.setFocus();
        });
    }

    /** Says what is picked; what somebody is writing at the moment stays. */
    void keep(String words) {
        if (text.isFocusControl() && !text.getText().equals(standing)) {
            standing = words;
        } else {
            set(words);
        }
    }

    /** Writes what is picked; the list stays closed. */
    private void set(String words) {
        standing = words;
        if (!text.getText().equals(words)) {
            isFilling = true;
            text.setText(words);
            isFilling = false;
        }
    }

    boolean isPicked() {
        return !standing.isEmpty();
    }

    /** Puts the cursor into the field. */
    public void focus() {
        text.setFocus();
        text.selectAll();
    }

    /** Forgets what is being looked for; called when the field goes away. */
    public void dispose() {
        job.forget();
    }

    private void typed() {
        if (!isFilling) {
            ask();
        }
    }

    private void ask() {
        isAsked = true;
        takesNext = false;
        job.ask(new Typed(text.getText().equals(standing) ? "" : text.getText()), TYPING_PAUSE);
    }

    private void show(List<Row> rows) {
        isAsked = false;
        fill(rows);
        if (takesNext) {
            take();
        }
    }

    private void fill(List<Row> rows) {
        table.setRedraw(false);
        table.removeAll();
        for (var row : rows) {
            var item = new TableItem(table, SWT.NONE);
            item.setData(row);
            item.setImage(icons.of(row.kind()));
            item.setText(row.numbers().isEmpty() || row.title().contains(row.numbers().get(0)) ? row.title()
                    : row.title() + "  \u00B7  " + row.numbers().get(0));
        }
        table.setSelection(0);
        table.setRedraw(true);
        var data = (GridData) table.getLayoutData();
        data.exclude = rows.isEmpty();
        data.heightHint = Math.min(MOST_ROWS, rows.size()) * table.getItemHeight() + EDGE;
        table.setVisible(!rows.isEmpty());
        relayout.run();
    }

    private boolean isOpen() {
        return table.getItemCount() > 0;
    }

    private void close() {
        job.forget();
        isAsked = false;
        if (isOpen()) {
            fill(List.of());
        }
    }

    private void pressed(Event event) {
        boolean isPlain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        if (event.keyCode == ' ' && (event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1) {
            event.doit = false;
            ask();
        } else if (isPlain) {
            event.doit = !isUsed(event.keyCode);
        }
    }

    private boolean isUsed(int key) {
        switch (key) {
            case SWT.ARROW_DOWN -> move(1);
            case SWT.ARROW_UP -> move(-1);
            case SWT.CR, SWT.KEYPAD_CR -> take();
            case SWT.ESC -> {
                close();
                set(standing);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void traversed(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            close();
        } else if (event.detail == SWT.TRAVERSE_RETURN || event.detail == SWT.TRAVERSE_ESCAPE) {
            event.doit = false;
        }
    }

    private void move(int by) {
        if (!isOpen()) {
            ask();
            return;
        }
        table.setSelection(Math.floorMod(table.getSelectionIndex() + by, table.getItemCount()));
        table.showSelection();
    }

    /** Enter waits for the answer where one is still to come. */
    private void take() {
        takesNext = isAsked;
        if (!isAsked && table.getSelectionIndex() >= 0) {
            var row = (Row) table.getItem(table.getSelectionIndex()).getData();
            text.setFocus();
            close();
            set(keepsTitle ? row.title() : "");
            taken.accept(row);
        }
    }
}
