// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.Failures;
import org.benchlore.ui.plan.PlanView;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the plan from anywhere. */
public final class ShowPlanHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        try {
            PlanView.show(HandlerUtil.getActiveWorkbenchWindow(event).getActivePage());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        return null;
    }
}
