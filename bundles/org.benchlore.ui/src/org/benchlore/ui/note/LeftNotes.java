// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.ui.edit.EditInput;
import org.benchlore.ui.session.Opened;
import org.eclipse.ui.IWorkbenchWindow;

/** Notes that were begun and left: those that neither an editor nor another dialog has open. */
final class LeftNotes {

    static final String KEY = "note.session";

    private final IWorkbenchWindow window;
    private final Opened opened;

    LeftNotes(IWorkbenchWindow window, Opened opened) {
        this.window = window;
        this.opened = opened;
    }

    /** The one that was worked on most. */
    Optional<EditSession> latest() {
        return MinuteNote.unfinished(opened.library().sessions()).stream()
                .filter(session -> !isInDialog(session) && !isInEditor(session))
                .max(Comparator.comparing(EditSession::version));
    }

    private boolean isInDialog(EditSession session) {
        return Arrays.stream(window.getShell().getShells()).anyMatch(shell -> shell.getData(KEY) == session);
    }

    private boolean isInEditor(EditSession session) {
        var input = new EditInput(opened.library().library().root(), session.path(), session.title());
        return window.getActivePage().findEditor(input) != null;
    }
}
