// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.nio.file.Files;
import java.nio.file.Path;

import org.benchlore.store.LibraryException;
import org.benchlore.ui.Failures;
import org.benchlore.workshop.Use;
import org.benchlore.workshop.Workshop;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Opens a library and hands it to the session. */
final class OpenJob extends Job {

    /** Finds the folder, which may take a while. */
    interface Folder {
        Path get() throws LibraryException;
    }

    private final Workshop workshop;
    private final Folder folder;
    private final LibrarySession session;

    OpenJob(Workshop workshop, Folder folder, LibrarySession session) {
        super(Messages.opening);
        this.workshop = workshop;
        this.folder = folder;
        this.session = session;
        setPriority(LONG);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            var place = folder.get();
            if (isShown(place)) {
                session.current().ifPresent(opened -> session.refresh());
            } else {
                session.show(workshop.open(place, Use.WORK, monitor));
            }
        } catch (LibraryException e) {
            Failures.show(Messages.openingFailed, e.getMessage(), e);
        }
        return Status.OK_STATUS;
    }

    private boolean isShown(Path place) {
        return session.current().map(opened -> opened.library().library().root())
                .filter(root -> isSame(root, place)).isPresent();
    }

    private static boolean isSame(Path root, Path place) {
        try {
            return Files.isSameFile(root, place);
        } catch (java.io.IOException e) {
            return false;
        }
    }
}
