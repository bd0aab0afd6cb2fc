// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a library's folder and opens it. */
public final class OpenLibraryHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (Leaving.isAllowed(window)) {
            new LibraryDialogs(window.getShell(), window.getService(LibrarySession.class)).open();
        }
        return null;
    }
}
