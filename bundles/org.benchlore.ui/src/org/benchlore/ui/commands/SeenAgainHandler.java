// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.note.SeenAgainAction;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Says of the note in front that the same was seen again. */
public final class SeenAgainHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        new SeenAgainAction(HandlerUtil.getActiveWorkbenchWindow(event)).run();
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
