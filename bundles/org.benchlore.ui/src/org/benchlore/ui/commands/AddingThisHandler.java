// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import java.util.HashMap;

import org.benchlore.ui.adding.AddingThis;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Weighs what is worth adding to what the command names, else to what is in front. */
public final class AddingThisHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var parameters = new HashMap<String, String>();
        event.getParameters().forEach((name, value) -> {
            if (value != null) {
                parameters.put(String.valueOf(name), value.toString());
            }
        });
        new AddingThis(HandlerUtil.getActiveWorkbenchWindow(event)).run(parameters);
        return null;
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
