// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;
import java.util.function.Function;

import org.benchlore.edit.EditSession;
import org.benchlore.ui.edit.form.Unread;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;

/** Save, undo and redo of the workbench, for one editor. What cannot be understood is taken back first. */
final class EditHandlers {

    private final IEditorSite site;
    private final EditSession session;
    private final Unread unread;
    private final Runnable refresh;

    private EditHandlers(IEditorSite site, EditSession session, Unread unread, Runnable refresh) {
        this.site = site;
        this.session = session;
        this.unread = unread;
        this.refresh = refresh;
    }

    static void install(IEditorSite site, Optional<EditSession> session, Unread unread, Runnable refresh) {
        session.ifPresent(open -> new EditHandlers(site, open, unread, refresh).install());
    }

    private void install() {
        var handlers = site.getService(IHandlerService.class);
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_UNDO, handler(this::undo));
        handlers.activateHandler(IWorkbenchCommandConstants.EDIT_REDO, handler(this::redo));
        // The platform's own handler learns a little late that an editor has something to save.
        handlers.activateHandler(IWorkbenchCommandConstants.FILE_SAVE, handler(this::save));
    }

    private AbstractHandler handler(Runnable action) {
        return new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                action.run();
                return null;
            }
        };
    }

    private void save() {
        var page = site.getPage();
        if (page.getActiveEditor() != null && page.getActiveEditor().isDirty()) {
            page.saveEditor(page.getActiveEditor(), false);
        }
    }

    private void undo() {
        if (!unread.isEmpty()) {
            unread.clear();
            refresh.run();
            return;
        }
        tell(Messages.undone, session.undoLabel(), open -> {
            open.undo();
            return null;
        });
    }

    private void redo() {
        tell(Messages.redone, session.redoLabel(), open -> {
            open.redo();
            return null;
        });
    }

    private void tell(String what, Optional<String> label, Function<EditSession, Void> action) {
        var line = site.getActionBars().getStatusLineManager();
        try {
            action.apply(session);
            line.setMessage(NLS.bind(what, label.orElse("")));
        } catch (IllegalStateException e) {
            line.setMessage(e.getMessage());
        }
    }
}
