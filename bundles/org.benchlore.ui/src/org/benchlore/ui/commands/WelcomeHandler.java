// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.welcome.Welcome;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the welcome page. */
public final class WelcomeHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        new Welcome(HandlerUtil.getActiveWorkbenchWindow(event)).show();
        return null;
    }
}
