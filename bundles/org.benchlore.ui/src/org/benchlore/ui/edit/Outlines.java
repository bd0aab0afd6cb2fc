// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.util.Optional;
import java.util.function.UnaryOperator;

import org.benchlore.edit.EditSession;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.benchlore.store.TextReferences;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.form.ClipKeys;
import org.benchlore.ui.session.LibrarySession;
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
        UnaryOperator<String> plain = text -> plain(editor, text);
        if (element instanceof Machine machine) {
            return MachineOutline.create(parent, new MachineShape(machine, plain), session, clips,
                    editor.getEditorSite().getActionBars().getStatusLineManager()::setMessage, focusForm, splitHours);
        }
        var sessions = editor.getSite().getService(Editing.class).sessions();
        return ProcedureOutline.create(parent, new ProcedureShape((Procedure) element, plain), session, sessions, clips,
                splitHours);
    }

    private static String plain(EditorPart editor, String text) {
        return editor.getSite().getService(LibrarySession.class).current()
                .map(opened -> TextReferences.plain(text, opened.library().library().catalogue())).orElse(text);
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
