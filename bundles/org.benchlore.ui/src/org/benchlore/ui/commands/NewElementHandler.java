// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.model.Kind;
import org.benchlore.ui.edit.NewDialog;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Begins a new element of the kind that the command names, a note where it names none. */
public final class NewElementHandler extends AbstractHandler {

    private static final String KIND = "kind";

    @Override
    public Object execute(ExecutionEvent event) {
        var word = event.getParameters().get(KIND);
        var kind = Kind.of(word == null ? Kind.NOTE.word() : word.toString()).orElse(Kind.NOTE);
        new NewDialog(HandlerUtil.getActiveWorkbenchWindow(event), kind).open();
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
