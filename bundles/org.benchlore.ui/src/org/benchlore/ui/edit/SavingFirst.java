// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.nio.file.Path;

import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveOrder;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorSite;

/** Saves what a file leads to and no file has yet, before that file itself; says so where that was not possible. */
final class SavingFirst {

    private final IEditorSite site;

    SavingFirst(IEditorSite site) {
        this.site = site;
    }

    /** A file that could not be saved keeps the other one from nothing: two may lead to each other. */
    void save(EditSession session, IProgressMonitor monitor) {
        site.getService(Editing.class).sessions().ifPresent(sessions -> {
            for (var other : new SaveOrder(sessions).before(session)) {
                save(other, sessions.library().root(), monitor);
            }
        });
    }

    private void save(EditSession other, Path root, IProgressMonitor monitor) {
        var editor = site.getPage().findEditor(new EditInput(root, other.path(), other.title()));
        if (editor == null) {
            new Saving(site.getShell(), other).save(monitor);
        } else {
            editor.doSave(monitor);
            // That the other one was not saved is no reason to stop.
            monitor.setCanceled(false);
        }
        if (other.isDirty()) {
            site.getActionBars().getStatusLineManager().setMessage(NLS.bind(Messages.saveOther, other.title()));
        }
    }
}
