// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.access.SplitAction;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Splits the hours of the procedure or the machine that is being edited. */
public final class SplitHoursHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        new SplitAction(HandlerUtil.getActiveWorkbenchWindow(event)).run();
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
