// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;

import org.benchlore.edit.EditSession;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.form.ClipKeys;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** Makes the outline of an element: a procedure has one of ways and steps, a machine one of all that is in it. */
final class Outlines {

    private Outlines() {
    }

    static boolean has(TopElement element) {
        return element instanceof Procedure || element instanceof Machine;
    }

    static OutlinePart create(Composite parent, TopElement element, Optional<EditSession> session, EditorPart editor,
            ClipKeys clips, Runnable focusForm) {
        Runnable splitHours = () -> splitHours(editor);
        if (element instanceof Machine machine) {
            return MachineOutline.create(parent, machine, session, clips,
                    editor.getEditorSite().getActionBars().getStatusLineManager()::setMessage, focusForm, splitHours);
        }
        var sessions = editor.getSite().getService(Editing.class).sessions();
        return ProcedureOutline.create(parent, (Procedure) element, session, sessions, clips, splitHours);
    }

    private static void splitHours(EditorPart editor) {
        try {
            editor.getSite().getPage().activate(editor);
            editor.getSite().getService(IHandlerService.class).executeCommand(Ids.SPLIT_HOURS, null);
        } catch (CommandException e) {
            Failures.show(Messages.editFailed, e.getMessage(), e);
        }
    }
}
