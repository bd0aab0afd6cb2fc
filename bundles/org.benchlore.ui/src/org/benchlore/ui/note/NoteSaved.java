// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.model.Address;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.LoadedFile;
import org.benchlore.ui.page.ElementInput;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.benchlore.ui.status.LastChange;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

/** Shows a note that was saved, and takes it back into the dialog if somebody wants that. */
final class NoteSaved {

    private final IWorkbenchWindow window;
    private final Opened opened;

    NoteSaved(IWorkbenchWindow window, Opened opened) {
        this.window = window;
        this.opened = opened;
    }

    void show(LoadedFile file) {
        var note = file.root().orElseThrow();
        var address = new Address(file.path(), note.getId());
        var title = ElementTitle.of(note);
        new PageOpener(window.getActivePage(), window.getService(LibrarySession.class)).open(address);
        window.getService(LastChange.class).done(window, NLS.bind(Messages.saved, title), () -> {
            var minute = MinuteNote.takeBack(opened.library().sessions(), file);
            closePage(address, title);
            NoteDialog.show(window, minute, false);
            return NLS.bind(Messages.takenBack, title);
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
