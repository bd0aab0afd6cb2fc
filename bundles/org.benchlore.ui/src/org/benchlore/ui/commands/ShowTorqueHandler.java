// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.Failures;
import org.benchlore.ui.torque.TorqueView;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes to the torque view from anywhere. */
public final class ShowTorqueHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        try {
            TorqueView.show(HandlerUtil.getActiveWorkbenchWindow(event).getActivePage());
        } catch (PartInitException e) {
            Failures.show(Messages.viewFailed, e.getMessage(), e);
        }
        return null;
    }
}
