// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.titles;

import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.search.Titles;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.look.Words;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/** Opens an element by the beginnings of words of its title: arrows choose, Enter opens, Escape closes. */
public final class TitleDialog extends PlainDialog {

    private static final int MOST_ROWS = 50;
    private static final int TYPING_PAUSE = 30;
    private static final Point SIZE = new Point(860, 420);

    private final IWorkbenchWindow window;
    private final LibrarySession session;
    private LatestJob<Wish, List<Row>> job;
    private Text field;
    private Table table;
    private Icons icons;
    private Label none;
    private boolean answered;
    private boolean openWhenAnswered;

    private record Wish(Catalogue catalogue, String typed) {
    }

    /**
     * Makes a dialog.
     *
     * @param window opens what is chosen
     */
    public TitleDialog(IWorkbenchWindow window) {
        super(window.getShell(), Messages.title);
        this.window = window;
        this.session = window.getService(LibrarySession.class);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        new Label(area, SWT.NONE).setText(Messages.fieldLabel);
        createField(area);
        createTable(area);
        none = new Label(area, SWT.NONE);
        none.setData(Ids.WIDGET_ID, "titles.none");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(none);
        job = new LatestJob<>(Messages.finding, wish -> Titles.find(wish.catalogue(), wish.typed(), MOST_ROWS),
                new WindowThread(area), this::show);
        ask();
        return area;
    }

    private void createField(Composite area) {
        field = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        field.setData(Ids.WIDGET_ID, "titles.field");
        Keys.name(field, Messages.fieldName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
        field.addModifyListener(event -> ask());
        field.addListener(SWT.DefaultSelection, event -> openSelected());
        Keys.on(field, SWT.ARROW_DOWN, () -> move(1));
        Keys.on(field, SWT.ARROW_UP, () -> move(-1));
    }

    private void createTable(Composite area) {
        var frame = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.BORDER);
        table.setData(Ids.WIDGET_ID, "titles.table");
        Keys.name(table, Messages.tableName);
        icons = new Icons(table);
        for (int weight : new int[] {55, 14, 31}) {
            layout.setColumnData(new TableColumn(table, SWT.NONE), new ColumnWeightData(weight, true));
        }
        table.addListener(SWT.DefaultSelection, event -> openSelected());
    }

    @Override
    protected Control createButtonBar(Composite parent) {
        return new Composite(parent, SWT.NONE) {
            @Override
            public Point computeSize(int width, int height, boolean changed) {
                return new Point(0, 0);
            }
        };
    }

    private void ask() {
        answered = false;
        openWhenAnswered = false;
        session.current().ifPresent(opened -> job.ask(
                new Wish(opened.library().library().catalogue(), field.getText()), TYPING_PAUSE));
    }

    private void show(Wish wish, List<Row> rows) {
        table.setRedraw(false);
        table.removeAll();
        rows.forEach(row -> add(row, wish.catalogue()));
        table.setSelection(0);
        table.setRedraw(true);
        none.setText(rows.isEmpty() ? Messages.nothing : "");
        answered = true;
        if (openWhenAnswered) {
            openSelected();
        }
    }

    private void add(Row row, Catalogue catalogue) {
        var machines = row.machines().stream().flatMap(at -> catalogue.at(at).stream()).map(Row::title).distinct()
                .collect(Collectors.joining(", "));
        var item = new TableItem(table, SWT.NONE);
        item.setData(row);
        item.setImage(icons.of(row.kind()));
        item.setText(new String[] {row.title(), Words.one(row.kind()), machines});
    }

    private void move(int step) {
        if (table.getItemCount() > 0) {
            table.setSelection(Math.floorMod(table.getSelectionIndex() + step, table.getItemCount()));
            table.showSelection();
        }
    }

    /** Enter waits for the answer where one is still to come. */
    private void openSelected() {
        openWhenAnswered = !answered;
        var selection = table.getSelection();
        if (answered && selection.length > 0) {
            var address = ((Row) selection[0].getData()).address();
            close();
            new PageOpener(window.getActivePage(), session).open(address);
        }
    }

    @Override
    public boolean close() {
        if (job != null) {
            job.forget();
        }
        return super.close();
    }

    @Override
    protected Point getInitialSize() {
        var room = window.getShell().getSize();
        return new Point(Math.min(SIZE.x, room.x), Math.min(SIZE.y, room.y));
    }
}
