// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.titles.TitleDialog;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens an element by its title. */
public final class OpenByTitleHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        new TitleDialog(HandlerUtil.getActiveWorkbenchWindow(event)).open();
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
