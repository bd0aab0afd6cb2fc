// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.page.PageHistory;
import org.benchlore.ui.page.PageOpener;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the page that was read before this one. */
public final class BackHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        var opener = new PageOpener(window.getActivePage(), window.getService(LibrarySession.class));
        window.getService(PageHistory.class).back().ifPresent(opener::open);
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(PageHistory.class).canGo(-1));
    }
}
