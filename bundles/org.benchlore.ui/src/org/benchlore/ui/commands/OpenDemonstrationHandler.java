// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the user's copy of the demonstration library. */
public final class OpenDemonstrationHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (Leaving.isAllowed(window)) {
            window.getService(LibrarySession.class).openDemonstration();
        }
        return null;
    }
}
