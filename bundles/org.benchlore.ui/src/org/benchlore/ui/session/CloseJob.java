// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Closes a library that is no longer shown. */
final class CloseJob extends Job {

    private final OpenLibrary library;

    CloseJob(OpenLibrary library) {
        super(Messages.closing);
        this.library = library;
        setSystem(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        library.close();
        return Status.OK_STATUS;
    }
}
