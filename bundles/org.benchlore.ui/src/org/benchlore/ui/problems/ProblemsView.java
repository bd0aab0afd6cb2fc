// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.Comparator;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.store.FileProblem;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.look.Icons;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.part.ViewPart;

/** Lists what is wrong with the files of the library: where, and what to do. */
public final class ProblemsView extends ViewPart {

    private LibrarySession session;
    private Label summary;
    private Table table;
    private Icons icons;
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(parent);
        summary = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(summary);
        createTable(parent);
        unlisten = session.onChange(event -> show());
        show();
    }

    private void createTable(Composite parent) {
        var frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        var layout = new TableColumnLayout();
        frame.setLayout(layout);
        table = new Table(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        table.setData(Ids.WIDGET_ID, "problems.table");
        Keys.name(table, Messages.tableName);
        icons = new Icons(table);
        column(layout, Messages.columnPlace, 30);
        column(layout, Messages.columnReason, 70);
        table.addListener(SWT.DefaultSelection, event -> open((FileProblem) event.item.getData()));
    }

    private void column(TableColumnLayout layout, String title, int weight) {
        var column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        layout.setColumnData(column, new ColumnWeightData(weight, 120, true));
    }

    private void show() {
        if (table.isDisposed()) {
            return;
        }
        var problems = session.current().map(Opened::problems).orElse(List.of());
        summary.setText(summaryOf(problems.size()));
        table.setRedraw(false);
        table.removeAll();
        problems.stream().sorted(Comparator.comparing(FileProblem::severity).thenComparing(FileProblem::path)
                .thenComparing(FileProblem::line)).forEach(this::add);
        table.setRedraw(true);
    }

    private String summaryOf(int count) {
        if (session.current().isEmpty()) {
            return Messages.noLibrary;
        }
        return count == 0 ? Messages.noProblems : count == 1 ? Messages.oneProblem : NLS.bind(Messages.problems, count);
    }

    private void add(FileProblem problem) {
        var item = new TableItem(table, SWT.NONE);
        item.setData(problem);
        item.setImage(icons.named(problem.severity() == FileProblem.Severity.MISFIT ? "warning" : "error"));
        item.setText(0, problem.line() > 0 ? problem.path() + ":" + problem.line() : problem.path());
        item.setText(1, problem.reason());
    }

    private void open(FileProblem problem) {
        new PageOpener(getSite().getPage(), session).open(new Address(problem.path(), problem.path()));
    }

    @Override
    public void setFocus() {
        table.setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
