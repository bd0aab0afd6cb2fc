// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Makes a new library and opens it. */
public final class NewLibraryHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (Leaving.isAllowed(window)) {
            new LibraryDialogs(window.getShell(), window.getService(LibrarySession.class)).create();
        }
        return null;
    }
}
