// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.time.LocalDate;
import java.util.List;

import org.benchlore.diagnose.Assessment;
import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.Path;
import org.benchlore.diagnose.RankedCause;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.note.NoteDialog;
import org.benchlore.ui.plan.PlanView;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.benchlore.workshop.DiagnosedJob;
import org.benchlore.workshop.DiagnosedJob.Written;
import org.benchlore.workshop.DiagnosedNote;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/** What an answer leads on to: a note, a job record and the plan, each with all that is known filled in. */
final class NextSteps {

    private static final int MOST_CAUSES = 3;

    private final IWorkbenchWindow window;
    private final Opened opened;

    NextSteps(IWorkbenchWindow window, Opened opened) {
        this.window = window;
        this.opened = opened;
    }

    void writeDown(Assessment answer) {
        NoteDialog.begin(window, new DiagnosedNote(opened.library().library()).of(answer.path()));
    }

    /** Offers what is done about the causes that lead; taken at once where there is one thing only. */
    void plan(Assessment answer, Control anchor) {
        var menu = menu(anchor);
        for (var cause : answer.causes().stream().limit(MOST_CAUSES).toList()) {
            cause.cures().forEach(cure -> item(menu, "diagnose.plan." + cure.address().id(),
                    NLS.bind(Messages.planItem, cure.title(), cause.title()), () -> plan(answer, cure)));
        }
        if (menu.getItemCount() == 1) {
            plan(answer, answer.causes().stream().map(RankedCause::cures).flatMap(List::stream).findFirst().orElseThrow());
        } else {
            menu.setVisible(true);
        }
    }

    static boolean isPlanned(Assessment answer) {
        return answer.causes().stream().limit(MOST_CAUSES).anyMatch(cause -> !cause.cures().isEmpty());
    }

    private void plan(Assessment answer, Named cure) {
        var catalogue = opened.library().library().catalogue();
        try {
            var view = PlanView.show(window.getActivePage());
            catalogue.at(answer.about().address()).ifPresent(view::add);
            catalogue.at(cure.address()).ifPresent(view::add);
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
    }

    /** Offers the jobs of the unit that are not handed back, and a new one. */
    void intoJob(Assessment answer, Control anchor) {
        var path = answer.path();
        if (opened.library().library().catalogue().at(path.about()).filter(row -> row.kind() == Kind.UNIT).isEmpty()) {
            say(Messages.unitOnly);
        } else if (!opened.library().isWritable()) {
            say(Messages.readOnly);
        } else {
            var jobs = new DiagnosedJob(opened.library());
            var menu = menu(anchor);
            jobs.open(path.about()).forEach(row -> item(menu, "diagnose.job." + row.id(),
                    NLS.bind(Messages.intoThisJob, row.title()), () -> add(jobs, path, row)));
            item(menu, "diagnose.job.new", NLS.bind(Messages.newJob, answer.about().title()), () -> run(answer.about().title(), false,
                    () -> jobs.begin(path, LocalDate.now())));
            menu.setVisible(true);
        }
    }

    private void add(DiagnosedJob jobs, Path path, Row row) {
        run(row.title(), opened.library().sessions().find(row.path()).isPresent(), () -> jobs.add(path, row.address(), LocalDate.now()));
    }

    /** Writes into a job record. */
    private interface Writing {
        Written run() throws LibraryException;
    }

    /** A record that somebody is editing belongs to the window's thread; nothing is written on the disk then. */
    private void run(String title, boolean isEdited, Writing writing) {
        var thread = new WindowThread(window.getShell());
        if (isEdited) {
            write(title, writing, thread);
        } else {
            Job.create(Messages.writingJob, monitor -> {
                write(title, writing, thread);
            }).schedule();
        }
    }

    private void write(String title, Writing writing, WindowThread thread) {
        try {
            var written = writing.run();
            thread.run(() -> written(title, written));
        } catch (LibraryException e) {
            thread.run(() -> say(e.getMessage()));
        }
    }

    private void written(String title, Written written) {
        var named = title(written.job(), title);
        if (written.back().isEmpty()) {
            say(NLS.bind(Messages.jobInEditor, named));
            return;
        }
        window.getService(LastChange.class).done(window, NLS.bind(Messages.jobWritten, named), () -> {
            written.back().get().run();
            return NLS.bind(Messages.jobTakenBack, named);
        });
    }

    private String title(Address job, String otherwise) {
        return opened.library().library().catalogue().at(job).map(Row::title).orElse(otherwise);
    }

    private void say(String sentence) {
        window.getService(LastChange.class).say(window, sentence);
    }

    private static Menu menu(Control anchor) {
        if (anchor.getMenu() != null) {
            anchor.getMenu().dispose();
        }
        var menu = new Menu(anchor);
        anchor.setMenu(menu);
        menu.setLocation(anchor.toDisplay(0, anchor.getSize().y));
        return menu;
    }

    private static void item(Menu menu, String id, String words, Runnable action) {
        var item = new MenuItem(menu, SWT.PUSH);
        item.setText(words.replace("&", "&&"));
        item.setData(Ids.WIDGET_ID, id);
        item.addListener(SWT.Selection, event -> action.run());
    }
}
