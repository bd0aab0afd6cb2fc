// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.nio.file.Files;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.Sessions;
import org.benchlore.model.TopElement;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchSite;

/**
 * What an editor shows.
 *
 * @param element the working copy, or the element as it lies on the disk; empty if nothing can be read
 * @param session the session that edits it; empty for reading only
 * @param reason why it can only be read: a plain sentence, empty where there is a session
 */
record EditTarget(Optional<TopElement> element, Optional<EditSession> session, Optional<String> reason) {

    static EditTarget find(IWorkbenchSite site, EditInput input) {
        var opened = site.getService(LibrarySession.class).current();
        var sessions = site.getService(Editing.class).sessions();
        if (opened.isEmpty() || sessions.isEmpty() || !sessions.get().library().root().equals(input.library())) {
            return new EditTarget(Optional.empty(), Optional.empty(), Optional.of(Messages.noLibrary));
        }
        if (!opened.get().library().isWritable()) {
            return reading(sessions.get(), input, Messages.libraryReadOnly);
        }
        var file = input.library().resolve(input.path());
        if (Files.exists(file) && !Files.isWritable(file)) {
            return reading(sessions.get(), input, NLS.bind(Messages.fileReadOnly, input.path()));
        }
        return editing(sessions.get(), input);
    }

    private static EditTarget editing(Sessions sessions, EditInput input) {
        try {
            var session = sessions.open(input.path());
            return new EditTarget(Optional.of(session.element()), Optional.of(session), Optional.empty());
        } catch (LibraryException e) {
            return reading(sessions, input, e.getMessage());
        }
    }

    private static EditTarget reading(Sessions sessions, EditInput input, String reason) {
        var root = sessions.library().file(input.path()).flatMap(LoadedFile::root);
        return new EditTarget(root, Optional.empty(), Optional.of(reason));
    }
}
