// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.edit.NewDialog;
import org.benchlore.ui.edit.form.ComboKeys;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.plan.PlanView;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/** Lists the jobs of the shop: on which unit, where each stands, what it waits for, what is next to do. */
public final class JobsView extends ViewPart {

    private static final int FILTER_WIDTH = 160;

    private LibrarySession session;
    private Text typed;
    private Combo filter;
    private Label said;
    private JobTable table;
    private LatestJob<Opened, List<JobLine>> job;
    private List<JobLine> all = List.of();
    private boolean isRead;
    private Runnable unlisten = () -> { };

    @Override
    public void createPartControl(Composite parent) {
        session = getSite().getService(LibrarySession.class);
        var thread = new WindowThread(parent);
        GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(parent);
        createHead(parent);
        said = new Label(parent, SWT.WRAP);
        said.setData(Ids.WIDGET_ID, "jobs.said");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(said);
        table = new JobTable(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        var keys = new Label(parent, SWT.WRAP);
        keys.setText(Messages.keys);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(keys);
        table.onOpen(line -> new EditOpener(getSite().getPage()).edit(line.row().address()));
        table.on('r', () -> table.selected().ifPresent(line ->
                new PageOpener(getSite().getPage(), session).open(line.row().address())));
        table.on('n', this::begin);
        table.on('p', this::plan);
        job = new LatestJob<>(Messages.collecting, opened -> new JobLines(opened.library()).all(LocalDate.now()), thread,
                (opened, lines) -> {
                    all = lines;
                    isRead = true;
                    show();
                });
        unlisten = session.onChange(event -> changed());
        changed();
    }

    private void createHead(Composite parent) {
        var head = new Composite(parent, SWT.NONE);
        var layout = new RowLayout();
        layout.center = true;
        layout.marginLeft = 0;
        head.setLayout(layout);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(head);
        typed = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        typed.setMessage(Messages.filter);
        typed.setData(Ids.WIDGET_ID, "jobs.filter");
        Keys.name(typed, Messages.filter);
        typed.setLayoutData(new org.eclipse.swt.layout.RowData(FILTER_WIDTH, SWT.DEFAULT));
        typed.addListener(SWT.Modify, event -> show());
        Keys.on(typed, SWT.ARROW_DOWN, () -> table.table().setFocus());
        filter = new Combo(head, SWT.READ_ONLY | SWT.DROP_DOWN);
        filter.setData(Ids.WIDGET_ID, "jobs.which");
        Keys.name(filter, Messages.which);
        Arrays.stream(Filter.values()).forEach(one -> filter.add(one.words()));
        filter.select(0);
        ComboKeys.install(filter);
        filter.addListener(SWT.Selection, event -> show());
        button(head, "jobs.new", Messages.newJob, this::begin);
        button(head, "jobs.plan", Messages.fromPlan, this::plan);
    }

    private static void button(Composite head, String id, String words, Runnable action) {
        var button = new Button(head, SWT.PUSH);
        button.setText(words);
        button.setData(Ids.WIDGET_ID, id);
        button.addListener(SWT.Selection, event -> action.run());
    }

    private void begin() {
        if (session.current().isPresent()) {
            new NewDialog(getSite().getWorkbenchWindow(), Kind.JOB).open();
        }
    }

    private void plan() {
        try {
            PlanView.show(getSite().getPage());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }

    private void changed() {
        if (!table.control().isDisposed()) {
            session.current().ifPresentOrElse(opened -> job.ask(opened, 0), () -> {
                job.forget();
                all = List.of();
                isRead = false;
                show();
            });
        }
    }

    private void show() {
        if (table == null || table.control().isDisposed()) {
            return;
        }
        var which = Filter.values()[Math.max(0, filter.getSelectionIndex())];
        var shown = all.stream().filter(which::shows).filter(line -> line.matches(typed.getText())).toList();
        table.show(shown);
        said.setText(words(shown.size()));
        said.getParent().layout();
    }

    private String words(int shown) {
        if (session.current().isEmpty()) {
            return Messages.noLibrary;
        }
        if (!isRead) {
            return Messages.collecting;
        }
        long open = all.stream().filter(Filter.OPEN::shows).count();
        long waiting = all.stream().filter(Filter.WAITING::shows).count();
        if (shown == 0) {
            return all.isEmpty() ? Messages.noJobs : open == 0 && filter.getSelectionIndex() <= 0 ? Messages.noneOpen : Messages.noneShown;
        }
        return NLS.bind(Messages.counts, new Object[] {open, waiting, all.size() - open});
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == Address.class && table != null
                ? adapter.cast(table.selected().map(line -> line.row().address()).orElse(null)) : super.getAdapter(adapter);
    }

    @Override
    public void setFocus() {
        table.table().setFocus();
    }

    @Override
    public void dispose() {
        unlisten.run();
        if (job != null) {
            job.forget();
        }
        super.dispose();
    }
}
