// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

import org.benchlore.ui.Failures;
import org.benchlore.workshop.Checks;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Checks one library beside the window's thread: everything once, then changes in their order, then what they left for
 * later. Ends quietly if the library is closed meanwhile.
 */
final class CheckJob extends Job implements Executor {

    private final Checks checks;
    private final BooleanSupplier isOpen;
    private final Queue<Runnable> changes = new ConcurrentLinkedQueue<>();
    private boolean isWhole;

    CheckJob(Checks checks, BooleanSupplier isOpen) {
        super(Messages.checking);
        this.checks = checks;
        this.isOpen = isOpen;
        setSystem(true);
        setPriority(DECORATE);
    }

    @Override
    public void execute(Runnable change) {
        changes.add(change);
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            work(monitor);
        } catch (OperationCanceledException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            if (isOpen.getAsBoolean()) {
                Failures.log(Messages.checkingFailed, e);
            }
        }
        return Status.OK_STATUS;
    }

    private void work(IProgressMonitor monitor) {
        if (!isWhole && isOpen.getAsBoolean()) {
            checks.all(monitor);
            isWhole = true;
        }
        for (var change = changes.poll(); change != null && isOpen.getAsBoolean(); change = changes.poll()) {
            change.run();
        }
        if (isOpen.getAsBoolean() && !checks.checker().pending().isEmpty()) {
            checks.catchUp(monitor);
        }
    }
}
