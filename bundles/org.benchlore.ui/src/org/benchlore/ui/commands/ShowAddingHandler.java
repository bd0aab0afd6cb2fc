// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.Failures;
import org.benchlore.ui.adding.AddingView;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to what is worth adding from anywhere. */
public final class ShowAddingHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        try {
            AddingView.show(HandlerUtil.getActiveWorkbenchWindow(event).getActivePage());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        return null;
    }
}
