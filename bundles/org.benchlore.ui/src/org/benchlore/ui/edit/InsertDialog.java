// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Chooses steps of another procedure: the procedure by typing, its steps by ticks. */
final class InsertDialog extends PlainDialog {

    /** Takes what was chosen. */
    interface Taker {
        void take(String path, List<String> ids);
    }

    private static final Point SIZE = new Point(620, 520);
    private static final int ROWS = 6;

    private final Library library;
    private final Taker taker;
    private Text field;
    private Table procedures;
    private Table steps;

    InsertDialog(Shell shell, Library library, Taker taker) {
        super(shell, Messages.insertTitle);
        this.library = library;
        this.taker = taker;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        new Label(area, SWT.NONE).setText(Messages.insertProcedure);
        field = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL);
        field.setData(Ids.WIDGET_ID, "insert.field");
        Keys.name(field, Messages.insertProcedureName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
        field.addModifyListener(event -> showProcedures());
        procedures = table(area, SWT.SINGLE, "insert.procedures", Messages.insertProceduresName);
        procedures.addListener(SWT.Selection, event -> showSteps());
        new Label(area, SWT.NONE).setText(Messages.insertSteps);
        steps = table(area, SWT.CHECK, "insert.steps", Messages.insertStepsName);
        steps.addListener(SWT.Selection, event -> updateButtons());
        Keys.on(field, SWT.ARROW_DOWN, () -> procedures.setFocus());
        showProcedures();
        return area;
    }

    private static Table table(Composite area, int style, String id, String name) {
        var table = new Table(area, style | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, id);
        Keys.name(table, name);
        GridDataFactory.fillDefaults().grab(true, true).hint(SIZE.x / 2, ROWS * table.getItemHeight()).applyTo(table);
        return table;
    }

    private void showProcedures() {
        var wanted = field.getText().strip().toLowerCase(Locale.ROOT);
        procedures.removeAll();
        library.catalogue().rows(Kind.PROCEDURE).filter(row -> row.title().toLowerCase(Locale.ROOT).contains(wanted))
                .sorted(Comparator.comparing(Row::title, String.CASE_INSENSITIVE_ORDER)).forEach(row -> {
                    var item = new TableItem(procedures, SWT.NONE);
                    item.setText(row.title());
                    item.setData(row);
                });
        procedures.setSelection(0);
        showSteps();
    }

    private void showSteps() {
        steps.removeAll();
        for (var item : procedures.getSelection()) {
            library.file(((Row) item.getData()).path()).flatMap(LoadedFile::root).filter(Procedure.class::isInstance)
                    .map(Procedure.class::cast).ifPresent(this::showSteps);
        }
        updateButtons();
    }

    private void showSteps(Procedure procedure) {
        procedure.getWays().stream().filter(way -> way.getWork() != null)
                .flatMap(way -> way.getWork().getSteps().stream()).forEach(this::show);
    }

    private void show(Step step) {
        var item = new TableItem(steps, SWT.NONE);
        var words = TextReferences.plain(step.getText(), library.catalogue()).strip().replaceAll("\\s+", " ");
        item.setText(words.isEmpty() ? Messages.stepEmpty : words);
        item.setData(step.getId());
    }

    private List<String> ticked() {
        var ids = new ArrayList<String>();
        for (var item : steps.getItems()) {
            if (item.getChecked()) {
                ids.add((String) item.getData());
            }
        }
        return ids;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.insertOk, true).setData(Ids.WIDGET_ID, "insert.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        updateButtons();
    }

    private void updateButtons() {
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(!ticked().isEmpty());
        }
    }

    @Override
    protected void okPressed() {
        var path = ((Row) procedures.getSelection()[0].getData()).path();
        var ids = ticked();
        close();
        taker.take(path, ids);
    }

    @Override
    protected Point getInitialSize() {
        return SIZE;
    }
}
