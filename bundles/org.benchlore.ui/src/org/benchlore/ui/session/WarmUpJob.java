// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.util.function.BooleanSupplier;

import org.benchlore.ui.Failures;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Makes the first search of a library as quick as the others; ends quietly if the library is closed meanwhile. */
final class WarmUpJob extends Job {

    private final OpenLibrary library;
    private final BooleanSupplier isOpen;

    WarmUpJob(OpenLibrary library, BooleanSupplier isOpen) {
        super(Messages.warmingUp);
        this.library = library;
        this.isOpen = isOpen;
        setSystem(true);
        setPriority(DECORATE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            if (isOpen.getAsBoolean()) {
                library.search().warmUp();
            }
        } catch (RuntimeException e) {
            if (isOpen.getAsBoolean()) {
                Failures.log(Messages.warmingUpFailed, e);
            }
        }
        return Status.OK_STATUS;
    }
}
