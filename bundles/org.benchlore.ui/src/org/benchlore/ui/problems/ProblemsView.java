// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.problems;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.session.Checking;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Lists what is wrong with the library: files that cannot be read, and what the rules find; each with what to do. */
public final class ProblemsView extends ViewPart {

    private static final int FILTER_WIDTH = 180;
    private static final int[] SHARES = {70, 30};
    private static final int SASH = 6;
    /** More than anybody reads; the filter leads to the others. */
    private static final int MOST_SHOWN = 1000;

    private LibrarySession session;
    private Checking checking;
    private Text filter;
    private Button silenced;
    private Label summary;
    private ProblemTable table;
    private RulePane rule;
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        checking = getSite().getService(Checking.class);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(parent);
        createHead(parent);
        var sash = new SashForm(parent, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new ProblemTable(sash);
        rule = new RulePane(sash);
        sash.setWeights(SHARES);
        sash.setSashWidth(SASH);
        actions();
        var unlistenFiles = session.onChange(event -> show());
        var unlistenRules = checking.onChange(this::show);
        unlisten = () -> {
            unlistenFiles.run();
            unlistenRules.run();
        };
        show();
    }

    private void createHead(Composite parent) {
        var head = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        filter = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Messages.filter);
        filter.setData(Ids.WIDGET_ID, "problems.filter");
        Keys.name(filter, Messages.filter);
        GridDataFactory.fillDefaults().hint(FILTER_WIDTH, SWT.DEFAULT).applyTo(filter);
        filter.addListener(SWT.Modify, event -> show());
        Keys.on(filter, SWT.ARROW_DOWN, () -> table.table().setFocus());
        silenced = new Button(head, SWT.CHECK);
        silenced.setText(Messages.showSilenced);
        silenced.setData(Ids.WIDGET_ID, "problems.silenced");
        silenced.addListener(SWT.Selection, event -> show());
        summary = new Label(head, SWT.NONE);
        summary.setData(Ids.WIDGET_ID, "problems.summary");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(summary);
    }

    private void actions() {
        var actions = new ProblemActions(getSite());
        table.onOpen(actions::open);
        table.on('m', actions::mend);
        table.on('s', actions::silence);
        table.onSelect(this::showRule);
        new ProblemMenu(table).fill(actions, getSite().getPage());
    }

    private void show() {
        if (table == null || table.table().isDisposed()) {
            return;
        }
        var found = checking.found();
        var all = session.current().map(opened -> new ProblemRows(opened).of(found, silenced.getSelection()))
                .orElse(List.of());
        var shown = all.stream().filter(row -> row.matches(filter.getText())).limit(MOST_SHOWN).toList();
        table.show(shown);
        summary.setText(session.current().isEmpty() ? Messages.noLibrary : new Summary(found).of(all, shown));
        summary.setToolTipText(summary.getText());
        showRule();
    }

    private void showRule() {
        var row = table.selected();
        rule.show(row, row.flatMap(one -> checking.found().flatMap(found ->
                Optional.ofNullable(found.rules().get(one.rule())))));
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (adapter == Address.class) {
            return adapter.cast(table.selected().map(ProblemRow::at).orElse(null));
        }
        return super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        table.table().setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
