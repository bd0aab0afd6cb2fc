// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.Address;
import org.benchlore.plan.Plan;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.benchlore.workshop.PlannedJob;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Starts a job from a plan: asks for the senior where one is needed, saves beside the window's thread, opens the page. */
final class JobStarter {

    private final IWorkbenchWindow window;
    private final Opened opened;
    private final PlannedJob jobs;
    private final WindowThread thread;
    private final Consumer<String> said;
    private final Consumer<Address> opener;

    JobStarter(IWorkbenchWindow window, Opened opened, Consumer<String> said, Consumer<Address> opener) {
        this.window = window;
        this.opened = opened;
        this.jobs = new PlannedJob(opened.library());
        this.thread = new WindowThread(window.getShell());
        this.said = said;
        this.opener = opener;
    }

    void start(Plan plan) {
        if (plan.unit().isEmpty()) {
            said.accept(Messages.unitOnly);
        } else if (plan.procedures().isEmpty()) {
            said.accept(Messages.nothingLeft);
        } else if (!opened.library().isWritable()) {
            said.accept(Messages.readOnly);
        } else if (plan.needsSenior()) {
            new SeniorDialog(window.getShell(), jobs.seniors(), senior -> save(plan, senior)).open();
        } else {
            save(plan, Optional.empty());
        }
    }

    private void save(Plan plan, Optional<String> senior) {
        Job.create(Messages.startingJob, monitor -> {
            try {
                var file = jobs.start(plan, senior);
                thread.run(() -> saved(file));
            } catch (LibraryException e) {
                thread.run(() -> said.accept(e.getMessage()));
            }
        }).schedule();
    }

    private void saved(LoadedFile file) {
        var job = file.root().orElseThrow();
        var address = new Address(file.path(), job.getId());
        var title = ElementTitle.of(job);
        opener.accept(address);
        var sentence = NLS.bind(Messages.started, title);
        said.accept(sentence);
        window.getService(LastChange.class).done(window, sentence, () -> {
            jobs.takeBack(file);
            closePage(address, title);
            var back = NLS.bind(Messages.takenBack, title);
            said.accept(back);
            return back;
        });
    }

    private void closePage(Address address, String title) {
        var page = window.getActivePage();
        var editor = page.findEditor(new ElementInput(opened.library().library().root(), address, title));
        if (editor != null) {
            page.closeEditor(editor, false);
        }
    }
}
