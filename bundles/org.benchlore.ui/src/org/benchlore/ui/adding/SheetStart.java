// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.benchlore.model.JobRecord;
import org.benchlore.plan.adding.Adding;
import org.benchlore.store.ElementTitle;
import org.benchlore.ui.WindowThread;
import org.benchlore.ui.session.Opened;
import org.benchlore.workshop.CustomerSheets;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Opens the dialog of a customer's sheet with what its job gives; the job is read beside the window's thread. */
final class SheetStart {

    private final IWorkbenchWindow window;
    private final Opened opened;
    private final Consumer<String> said;

    SheetStart(IWorkbenchWindow window, Opened opened, Consumer<String> said) {
        this.window = window;
        this.opened = opened;
        this.said = said;
    }

    /** The job that is named, else the newest open one of the unit. */
    void open(Adding adding, Optional<String> jobId, String advice) {
        var thread = new WindowThread(window.getShell());
        said.accept(Messages.readingJob);
        Job.create(Messages.readingJob, monitor -> {
            var sheets = new CustomerSheets(opened.library());
            var job = jobId.flatMap(opened.library().library()::top).filter(JobRecord.class::isInstance).map(JobRecord.class::cast)
                    .or(() -> sheets.job(adding));
            var basis = new SheetBasis(opened, adding, job, job.map(sheets::photos).orElse(List.of()), advice);
            thread.run(() -> {
                said.accept(job.map(it -> NLS.bind(Messages.sheetOfJob, ElementTitle.of(it))).orElse(Messages.sheetWithoutJob));
                new SheetDialog(window, basis).open();
            });
        }).schedule();
    }
}
