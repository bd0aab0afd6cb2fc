// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Closes the library; enabled while one is open. */
public final class CloseLibraryHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (Leaving.isAllowed(window)) {
            window.getService(LibrarySession.class).close();
        }
        return null;
    }

    @Override
    public boolean isEnabled() {
        return PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent();
    }
}
