// SPDX-License-Identifier: EPL-2.0
package org.benchlore.app;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** Gives the platform's commands for going back and forward their actions; menus are in plugin.xml. */
final class ApplicationActionBarAdvisor extends ActionBarAdvisor {

    ApplicationActionBarAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        register(ActionFactory.BACKWARD_HISTORY.create(window));
        register(ActionFactory.FORWARD_HISTORY.create(window));
    }
}
