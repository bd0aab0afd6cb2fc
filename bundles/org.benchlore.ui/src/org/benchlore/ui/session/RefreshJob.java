// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Looks for changes of the library on the disk; the library itself tells what it found. */
final class RefreshJob extends Job {

    private final OpenLibrary library;
    private final LibrarySession session;

    RefreshJob(OpenLibrary library, LibrarySession session) {
        super(Messages.refreshing);
        this.library = library;
        this.session = session;
        setPriority(DECORATE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        if (session.current().filter(opened -> opened.library() == library).isEmpty()) {
            return Status.OK_STATUS;
        }
        try {
            library.refresh(monitor);
        } catch (LibraryException e) {
            Failures.log(e.getMessage(), e);
        }
        return Status.OK_STATUS;
    }
}
