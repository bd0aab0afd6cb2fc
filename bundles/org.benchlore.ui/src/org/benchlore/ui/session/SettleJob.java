// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.util.Optional;
import java.util.function.Supplier;

import org.benchlore.ui.Failures;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;

/** Keeps on the disk what is known of the last changes, once nothing has changed for some seconds. */
final class SettleJob extends Job {

    private static final long QUIET_MILLIS = 4_000;

    private final Supplier<Optional<OpenLibrary>> shown;

    SettleJob(Supplier<Optional<OpenLibrary>> shown, ISchedulingRule rule) {
        super(Messages.settling);
        setRule(rule);
        this.shown = shown;
        setSystem(true);
        setPriority(DECORATE);
    }

    /** Starts waiting, from the beginning if it waits already. */
    void startWaiting() {
        cancel();
        schedule(QUIET_MILLIS);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            shown.get().ifPresent(OpenLibrary::settle);
        } catch (RuntimeException e) {
            Failures.log(Messages.settlingFailed, e);
        }
        return Status.OK_STATUS;
    }
}
