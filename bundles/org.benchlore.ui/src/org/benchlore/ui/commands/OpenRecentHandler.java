// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import java.nio.file.Path;

import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the library whose folder the command names. */
public final class OpenRecentHandler extends AbstractHandler {

    /** The command. */
    public static final String COMMAND = "org.benchlore.ui.openRecent";
    /** Its parameter: a folder. */
    public static final String FOLDER = "folder";

    @Override
    public Object execute(ExecutionEvent event) {
        var folder = event.getParameter(FOLDER);
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (folder != null && Leaving.isAllowed(window)) {
            window.getService(LibrarySession.class).open(Path.of(folder));
        }
        return null;
    }
}
