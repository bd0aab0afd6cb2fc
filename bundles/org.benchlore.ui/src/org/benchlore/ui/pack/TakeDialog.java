// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.pack.PackException;
import org.benchlore.pack.take.Item;
import org.benchlore.pack.take.Preview;
import org.benchlore.pack.take.Taking.Conflicts;
import org.benchlore.pack.take.Verdict;
import org.benchlore.pack.zip.PackFile;
import org.benchlore.page.Labels;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.PlainDialog;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Shows what a pack would do to the library, file by file, and takes it. Conflicts want an answer first. */
final class TakeDialog extends PlainDialog {

    private static final int WIDTH = 760;
    private static final int TABLE_HEIGHT = 220;
    private static final int DETAIL_HEIGHT = 80;
    private static final List<Verdict> ORDER = List.of(Verdict.CONFLICT, Verdict.CHANGED, Verdict.NEW, Verdict.OLDER, Verdict.SAME);

    private final OpenLibrary library;
    private final Path file;
    private final Preview preview;
    private Table table;
    private Text detail;
    private Label problem;
    private Optional<Conflicts> conflicts;

    TakeDialog(Shell shell, OpenLibrary library, Path file, Preview preview) {
        super(shell, Messages.takeTitle);
        this.library = library;
        this.file = file;
        this.preview = preview;
        this.conflicts = hasConflict() ? Optional.empty() : Optional.of(Conflicts.REFUSE);
    }

    private boolean hasConflict() {
        return !preview.of(Verdict.CONFLICT).isEmpty();
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        var manifest = preview.manifest();
        line(area, NLS.bind(Messages.takeHead, new Object[] {manifest.title(), manifest.shop(), manifest.made()}));
        if (manifest.invented()) {
            line(area, Labels.INVENTED);
        }
        line(area, PackWords.counts(preview)).setData(Ids.WIDGET_ID, "take.counts");
        createTable(area);
        detail = new Text(area, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        detail.setData(Ids.WIDGET_ID, "take.detail");
        Keys.name(detail, Messages.takeDetail);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, DETAIL_HEIGHT).applyTo(detail);
        if (hasConflict()) {
            line(area, Messages.conflictQuestion);
            answer(area, "take.mine", Messages.keepMine, Conflicts.KEEP_OWN);
            answer(area, "take.theirs", Messages.takeTheirs, Conflicts.TAKE_THEIRS);
        }
        line(area, Messages.reviewedElsewhere);
        problem = line(area, "");
        problem.setData(Ids.WIDGET_ID, "take.problem");
        table.setSelection(0);
        show((Item) table.getItem(0).getData());
        return area;
    }

    private static Label line(Composite area, String words) {
        var label = new Label(area, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void createTable(Composite area) {
        table = LineTable.of(area, "take.items", Messages.takeTable, Messages.columnVerdict, Messages.columnTitle, Messages.columnWhy);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, TABLE_HEIGHT).applyTo(table);
        preview.items().stream().sorted(Comparator.comparing((Item item) -> ORDER.indexOf(item.verdict())).thenComparing(Item::path))
                .forEach(this::add);
        LineTable.pack(table);
        table.addListener(SWT.Selection, event -> show((Item) event.item.getData()));
    }

    private void add(Item item) {
        var row = new TableItem(table, SWT.NONE);
        row.setText(new String[] {Labels.capital(item.verdict().word()), item.title(), item.reason()});
        row.setData(item);
    }

    private void show(Item item) {
        detail.setText(item.path() + (item.reason().isEmpty() ? "" : "\n" + item.reason()) + (item.differences().isEmpty() ? "" : "\n" + String.join("\n", item.differences())));
    }

    private void answer(Composite area, String id, String words, Conflicts answer) {
        var button = new Button(area, SWT.RADIO);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                conflicts = Optional.of(answer);
                enable();
            }
        });
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.take, true).setData(Ids.WIDGET_ID, "take.ok");
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        enable();
    }

    private void enable() {
        boolean hasSomething = preview.hasNews() || conflicts.filter(Conflicts.TAKE_THEIRS::equals).isPresent();
        getButton(IDialogConstants.OK_ID).setEnabled(conflicts.isPresent() && hasSomething);
        complain(!hasSomething && !hasConflict() ? Messages.nothingNew : "");
    }

    private void complain(String sentence) {
        problem.setText(sentence.replace("&", "&&"));
        problem.requestLayout();
    }

    @Override
    protected void okPressed() {
        var shell = (Shell) getShell().getParent();
        new Waiting(getShell(), this::complain).on(this::take).ifPresent(taken -> {
            super.okPressed();
            new ResultDialog(shell, Messages.takeTitle, NLS.bind(Messages.taken, PackWords.counts(taken)),
                    PackWords.leftOut(taken.manifest().leftOut())).open();
        });
    }

    /** The file is looked through once more: it may be another one by now. */
    private Preview take(IProgressMonitor monitor) throws IOException, PackException {
        var progress = SubMonitor.convert(monitor, 2);
        try (var pack = PackFile.open(file, progress.split(1))) {
            return library.taking().take(pack, conflicts.orElse(Conflicts.REFUSE), progress.split(1));
        }
    }
}
