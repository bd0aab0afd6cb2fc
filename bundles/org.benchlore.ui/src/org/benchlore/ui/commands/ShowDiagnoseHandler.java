// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.Failures;
import org.benchlore.ui.diagnose.DiagnoseView;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the view that says what may be wrong, and takes in what was in front. */
public final class ShowDiagnoseHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        var page = window.getActivePage();
        var place = DiagnoseView.place(page, window.getService(LibrarySession.class));
        try {
            DiagnoseView.show(page, place);
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        return null;
    }
}
