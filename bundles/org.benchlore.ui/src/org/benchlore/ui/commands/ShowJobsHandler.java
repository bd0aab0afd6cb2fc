// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the jobs. */
public final class ShowJobsHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        try {
            HandlerUtil.getActiveWorkbenchWindow(event).getActivePage().showView(Ids.JOBS_VIEW);
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        return null;
    }
}
