// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.util.List;

import org.benchlore.model.Person;
import org.benchlore.pack.PackException;
import org.benchlore.pack.learn.Progress;
import org.benchlore.pack.learn.Trainings;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Asks whose progress came back, shows what would be taken of it and why not, and takes it. */
final class ProgressDialog extends PlainDialog {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 200;

    private final Trainings trainings;
    private final Progress progress;
    private final List<Person> people;
    private Combo person;
    private Table table;
    private Label problem;

    ProgressDialog(Shell shell, Trainings trainings, Progress progress) {
        super(shell, Messages.progressTitle);
        this.trainings = trainings;
        this.progress = progress;
        this.people = trainings.people();
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        line(area, NLS.bind(Messages.progressHead, progress.pack(), progress.learner()));
        line(area, Messages.progressWhose);
        person = new Combo(area, SWT.READ_ONLY);
        person.setData(Ids.WIDGET_ID, "progress.person");
        Keys.name(person, Messages.progressWhose);
        people.forEach(one -> person.add(one.getTitle() == null ? one.getId() : one.getTitle()));
        person.addListener(SWT.Selection, event -> show());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(person);
        table = LineTable.of(area, "progress.lines", Messages.progressTable, Messages.columnTitle, Messages.columnLevel,
                Messages.columnDay, Messages.columnMentor, Messages.columnWhy);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(table);
        problem = line(area, "");
        return area;
    }

    private static Label line(Composite area, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.take, true).setData(Ids.WIDGET_ID, "progress.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        select();
    }

    /** Whoever has the name that was typed is proposed; nobody is guessed. */
    private void select() {
        for (int i = 0; i < people.size(); i++) {
            if (progress.learner().strip().equalsIgnoreCase(people.get(i).getTitle())) {
                person.select(i);
            }
        }
        show();
    }

    private void show() {
        table.removeAll();
        int index = person.getSelectionIndex();
        boolean takesAny = false;
        try {
            for (var line : index < 0 ? List.<Trainings.Line>of() : trainings.preview(people.get(index).getId(), progress)) {
                add(line);
                takesAny |= line.isTaken();
            }
            complain(index < 0 ? Messages.progressNobody : takesAny ? "" : Messages.progressNothing);
        } catch (PackException e) {
            complain(e.getMessage());
        }
        LineTable.pack(table);
        getButton(IDialogConstants.OK_ID).setEnabled(takesAny);
    }

    private void add(Trainings.Line line) {
        new TableItem(table, SWT.NONE).setText(new String[] {line.title(), Labels.of(line.level()), line.on().map(Object::toString).orElse(""),
            line.mentor(), line.isTaken() ? Messages.wouldBeTaken : NLS.bind(Messages.notTaken, line.refusal())});
    }

    private void complain(String sentence) {
        problem.setText(sentence.replace("&", "&&"));
        problem.requestLayout();
    }

    @Override
    protected void okPressed() {
        var id = people.get(person.getSelectionIndex()).getId();
        var shell = (Shell) getShell().getParent();
        new Waiting(getShell(), this::complain).on(monitor -> trainings.take(id, progress)).ifPresent(lines -> {
            super.okPressed();
            new ResultDialog(shell, Messages.progressTitle, NLS.bind(Messages.progressTaken,
                    lines.stream().filter(Trainings.Line::isTaken).count(), lines.size()), List.of()).open();
        });
    }
}
