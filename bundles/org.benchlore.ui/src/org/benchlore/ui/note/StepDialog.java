// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.desk.StepPlaces;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Chooses where a note's words become a step: the procedure is proposed or found by typing, then the place. */
final class StepDialog extends Dialog {

    /** Where the step goes: a procedure's file, the number of its way and the index among the steps there. */
    record Place(String path, int way, int index) {
    }

    /** Takes the place. */
    interface Taker {
        void take(Place place);
    }

    private static final Point SIZE = new Point(680, 560);
    private static final int ROWS = 5;

    private final Library library;
    private final FieldNote note;
    private final List<Row> all;
    private final Taker taker;
    private Text field;
    private Table procedures;
    private Table steps;

    StepDialog(Shell shell, Library library, FieldNote note, Taker taker) {
        super(shell);
        this.library = library;
        this.note = note;
        this.taker = taker;
        this.all = new StepPlaces(library).procedures(note);
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.stepTitle);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var words = new Label(area, SWT.WRAP);
        words.setText(NLS.bind(Messages.stepWords, oneLine(note.getText())).replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(SIZE.x - 40, SWT.DEFAULT).applyTo(words);
        new Label(area, SWT.NONE).setText(Messages.stepProcedure);
        field = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL);
        field.setData(Ids.WIDGET_ID, "step.field");
        Keys.name(field, Messages.stepProcedureName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
        field.addModifyListener(event -> showProcedures());
        procedures = table(area, "step.procedures", Messages.stepProceduresName);
        procedures.addListener(SWT.Selection, event -> showSteps());
        new Label(area, SWT.NONE).setText(Messages.stepPlace);
        steps = table(area, "step.places", Messages.stepPlacesName);
        Keys.on(field, SWT.ARROW_DOWN, () -> move(1));
        Keys.on(field, SWT.ARROW_UP, () -> move(-1));
        showProcedures();
        return area;
    }

    private Table table(Composite area, String id, String name) {
        var table = new Table(area, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData(Ids.WIDGET_ID, id);
        Keys.name(table, name);
        GridDataFactory.fillDefaults().grab(true, true).hint(SIZE.x - 60, ROWS * table.getItemHeight()).applyTo(table);
        table.addListener(SWT.DefaultSelection, event -> okPressed());
        return table;
    }

    private void move(int by) {
        if (procedures.getItemCount() > 0) {
            procedures.setSelection(Math.floorMod(procedures.getSelectionIndex() + by, procedures.getItemCount()));
            procedures.showSelection();
            showSteps();
        }
    }

    private void showProcedures() {
        var wanted = field.getText().strip().toLowerCase(Locale.ROOT).split("\\s+");
        procedures.removeAll();
        for (var row : all) {
            var title = row.title().toLowerCase(Locale.ROOT);
            if (List.of(wanted).stream().allMatch(title::contains)) {
                var item = new TableItem(procedures, SWT.NONE);
                item.setText(row.title());
                item.setData(row);
            }
        }
        procedures.setSelection(0);
        showSteps();
    }

    private Optional<Row> procedure() {
        return procedures.getSelectionCount() == 0 ? Optional.empty()
                : Optional.of((Row) procedures.getSelection()[0].getData());
    }

    private void showSteps() {
        steps.removeAll();
        procedure().flatMap(row -> library.file(row.path())).flatMap(LoadedFile::root)
                .filter(Procedure.class::isInstance).map(Procedure.class::cast).ifPresent(this::showSteps);
        updateButtons();
    }

    private void showSteps(Procedure procedure) {
        for (int i = 0; i < procedure.getWays().size(); i++) {
            var work = procedure.getWays().get(i).getWork();
            if (work != null) {
                show(procedure, i, work);
            }
        }
        if (steps.getSelectionCount() == 0) {
            steps.setSelection(steps.getItemCount() - 1);
        }
        steps.showSelection();
    }

    private void show(Procedure procedure, int way, Work work) {
        var path = library.addressOf(procedure).orElseThrow().path();
        place(new Place(path, way, 0), Messages.stepFirst);
        int best = StepPlaces.index(note, work);
        for (int i = 0; i < work.getSteps().size(); i++) {
            place(new Place(path, way, i + 1), NLS.bind(Messages.stepBehind, i + 1, oneLine(words(work.getSteps().get(i)))));
            if (i + 1 == best && steps.getSelectionCount() == 0) {
                steps.setSelection(steps.getItemCount() - 1);
            }
        }
        if (best == InnerEdits.END && way == 0 && steps.getSelectionCount() == 0) {
            steps.setSelection(steps.getItemCount() - 1);
        }
    }

    private void place(Place place, String words) {
        var item = new TableItem(steps, SWT.NONE);
        item.setText(words);
        item.setData(place);
    }

    private String words(Step step) {
        return TextReferences.plain(step.getText(), library.catalogue());
    }

    private static String oneLine(String text) {
        var line = text == null ? "" : text.strip().replaceAll("\\s+", " ");
        return line.length() <= 200 ? line : line.substring(0, 199) + "…";
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.stepOk, true).setData(Ids.WIDGET_ID, "step.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        updateButtons();
    }

    private void updateButtons() {
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(steps.getSelectionCount() > 0);
        }
    }

    @Override
    protected void okPressed() {
        if (steps.getSelectionCount() > 0) {
            var place = (Place) steps.getSelection()[0].getData();
            close();
            taker.take(place);
        }
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        var room = getParentShell().getSize();
        return new Point(Math.min(SIZE.x, room.x), Math.min(SIZE.y, room.y));
    }
}
