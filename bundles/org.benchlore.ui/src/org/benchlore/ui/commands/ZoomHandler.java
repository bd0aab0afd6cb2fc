// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.ui.session.SessionMemory;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Makes pages larger or smaller, or gives them their usual size again. */
public final class ZoomHandler extends AbstractHandler {

    private static final int USUAL = 100;
    private static final int STEP = 10;
    private static final int LEAST = 60;
    private static final int MOST = 300;

    @Override
    public Object execute(ExecutionEvent event) {
        var memory = HandlerUtil.getActiveWorkbenchWindow(event).getService(SessionMemory.class);
        int next = switch (String.valueOf(event.getParameter("by"))) {
            case "in" -> memory.zoom() + STEP;
            case "out" -> memory.zoom() - STEP;
            default -> USUAL;
        };
        memory.rememberZoom(Math.max(LEAST, Math.min(MOST, next)));
        return null;
    }
}
