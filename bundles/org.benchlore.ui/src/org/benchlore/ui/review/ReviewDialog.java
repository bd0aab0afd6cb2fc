// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.form.ComboKeys;
import org.benchlore.workshop.ReviewDesk;
import org.benchlore.workshop.ReviewDesk.Look;
import org.benchlore.workshop.ReviewDesk.Reviewer;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/**
 * Shows a reviewer what was changed in a procedure since it was reviewed and what the rules find in it, and asks who
 * reviews it. What stands against it is said; there is no going on before that is out of the way.
 */
final class ReviewDialog extends PlainDialog {

    private final ReviewDesk desk;
    private final Row row;
    private final List<Reviewer> people;
    private final Consumer<Reviewer> answered;
    private LatestJob<Row, Optional<Look>> job;
    private Optional<Look> look = Optional.empty();
    private Label head;
    private Text changes;
    private Text problems;
    private Combo by;
    private Label against;

    ReviewDialog(Shell shell, ReviewDesk desk, Row row, Consumer<Reviewer> answered) {
        super(shell, Messages.reviewTitle);
        this.desk = desk;
        this.row = row;
        this.people = desk.people();
        this.answered = answered;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        head = Lines.label(area, "review.head", row.title());
        changes = Lines.text(area, "review.changes", Messages.changedSince);
        problems = Lines.text(area, "review.problems", Messages.problems);
        createPeople(area);
        against = Lines.label(area, "review.against", Messages.looking);
        job = new LatestJob<>(Messages.looking, asked -> desk.look(asked.path()), new WindowThread(area),
                (asked, found) -> show(found));
        job.ask(row, 0);
        return area;
    }

    private void createPeople(Composite area) {
        new Label(area, SWT.NONE).setText(Messages.reviewer);
        by = new Combo(area, SWT.READ_ONLY);
        by.setData(Ids.WIDGET_ID, "review.by");
        Keys.name(by, Messages.reviewer.replace("&", ""));
        people.forEach(person -> by.add(person.name()));
        ComboKeys.install(by);
        by.addListener(SWT.Selection, event -> judge());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(by);
        by.setFocus();
    }

    private void show(Optional<Look> found) {
        look = found;
        var words = new LookWords(row.title());
        head.setText(found.map(words::standing).orElse(Messages.unreadable).replace("&", "&&"));
        changes.setText(found.map(words::changes).orElse(""));
        problems.setText(found.map(words::problems).orElse(""));
        judge();
        head.requestLayout();
    }

    private Optional<Reviewer> chosen() {
        return by.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(people.get(by.getSelectionIndex()));
    }

    private void judge() {
        var obstacles = look.flatMap(one -> chosen().map(reviewer -> desk.obstacles(one, reviewer.at())));
        against.setText(against(obstacles).replace("&", "&&"));
        against.requestLayout();
        var ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(obstacles.filter(List::isEmpty).isPresent());
        }
    }

    private String against(Optional<List<String>> obstacles) {
        if (people.isEmpty()) {
            return Messages.nobodyThere;
        }
        return look.isEmpty() ? Messages.looking : obstacles.map(found -> found.isEmpty() ? Messages.mayBeReviewed
                : String.join(".\n", found) + ".").orElse(Messages.whoReviews);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.markReviewed, true).setData(Ids.WIDGET_ID, "review.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        judge();
    }

    @Override
    protected void okPressed() {
        var reviewer = chosen();
        close();
        reviewer.ifPresent(answered);
    }

    @Override
    public boolean close() {
        if (job != null) {
            job.forget();
        }
        return super.close();
    }
}
