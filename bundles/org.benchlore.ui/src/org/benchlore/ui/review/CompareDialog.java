// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.search.Titles;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.PlainDialog;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.plan.PickField;
import org.benchlore.workshop.Comparison;
import org.benchlore.workshop.Comparisons;
import org.benchlore.workshop.Comparisons.Version;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Says in words how an element differs from what was reviewed, from what is saved, from another one or from a file. */
final class CompareDialog extends PlainDialog {

    private static final int MOST = 40;

    private final Comparisons comparisons;
    private final OpenLibrary open;
    private final Row row;
    private final Version now;
    private LatestJob<Supplier<Comparison>, Told> job;
    private Label head;
    private Text differences;

    /** What came of a comparison. */
    private record Told(String head, String text) {
    }

    CompareDialog(Shell shell, OpenLibrary open, Row row) {
        super(shell, Messages.compareTitle);
        this.comparisons = open.comparisons();
        this.open = open;
        this.row = row;
        this.now = new Version(NLS.bind(Messages.quoted, row.title()),
                open.sessions().current(row.path()).orElseThrow());
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        Lines.label(area, "compare.question", NLS.bind(Messages.compareWith, row.title()));
        createChoices(area);
        var pick = new PickField(area, "compare.other", new PickField.Names(Messages.other, Messages.otherHint), true,
                this::find, () -> area.layout(true, true), other -> ask(() -> comparisons.between(comparisons.find(other.id()), now)));
        area.addListener(SWT.Dispose, event -> pick.dispose());
        head = Lines.label(area, "compare.head", Messages.chooseVersion);
        differences = Lines.text(area, "compare.differences", Messages.differences);
        job = new LatestJob<>(Messages.comparing, CompareDialog::told, new WindowThread(area), (asked, told) -> show(told));
        first().ifPresent(this::ask);
        return area;
    }

    private void createChoices(Composite area) {
        var line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        button(line, "compare.reviewed", Messages.reviewedCopy, sinceReview());
        button(line, "compare.saved", Messages.saved, sinceSaved());
        var file = new Button(line, SWT.PUSH);
        file.setText(Messages.file);
        file.setData(Ids.WIDGET_ID, "compare.file");
        file.addListener(SWT.Selection, event -> chooseFile());
    }

    private void button(Composite line, String id, String words, Optional<Supplier<Comparison>> comparison) {
        var button = new Button(line, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.setEnabled(comparison.isPresent());
        button.addListener(SWT.Selection, event -> comparison.ifPresent(this::ask));
    }

    private Optional<Supplier<Comparison>> first() {
        return sinceReview().or(this::sinceSaved);
    }

    private Optional<Supplier<Comparison>> sinceReview() {
        return now.element() instanceof Procedure procedure && comparisons.reviewed(procedure).isPresent()
                ? Optional.of(() -> comparisons.sinceReview(procedure).orElseThrow()) : Optional.empty();
    }

    private Optional<Supplier<Comparison>> sinceSaved() {
        Optional<TopElement> saved = open.sessions().find(row.path()).filter(session -> session.isDirty())
                .flatMap(session -> session.base().flatMap(LoadedFile::root));
        return saved.map(element -> () -> comparisons.between(
                new Version(NLS.bind(Messages.savedVersion, row.title()), element), now));
    }

    private List<Row> find(String typed) {
        return Titles.find(open.library().catalogue(), typed, Integer.MAX_VALUE).stream()
                .filter(one -> one.kind() == row.kind() && !one.path().equals(row.path())).limit(MOST).toList();
    }

    private void chooseFile() {
        var dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText(Messages.fileTitle);
        dialog.setFilterExtensions(new String[] {"*.xmi;*.reviewed", "*.*"});
        Optional.ofNullable(dialog.open()).map(Path::of)
                .ifPresent(file -> ask(() -> comparisons.between(comparisons.file(file), now)));
    }

    private void ask(Supplier<Comparison> comparison) {
        job.ask(comparison, 0);
    }

    private static Told told(Supplier<Comparison> asked) {
        try {
            var comparison = asked.get();
            int count = comparison.sentences().size();
            var words = count == 0 ? Messages.alike : count == 1 ? Messages.oneDifference : Messages.someDifferences;
            return new Told(NLS.bind(words, new Object[] {comparison.before(), comparison.after(), count}),
                    LookWords.bullets(comparison.sentences()));
        } catch (IllegalArgumentException e) {
            return new Told(e.getMessage(), "");
        }
    }

    private void show(Told told) {
        head.setText(told.head().replace("&", "&&"));
        differences.setText(told.text());
        head.requestLayout();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true)
                .setData(Ids.WIDGET_ID, "compare.close");
    }

    @Override
    public boolean close() {
        job.forget();
        return super.close();
    }
}
