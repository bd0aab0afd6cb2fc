// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import java.util.Locale;
import java.util.Map;

import org.benchlore.ui.look.Appearance;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/** Makes the window light, dark, or as the system is. */
public final class AppearanceHandler extends AbstractHandler implements IElementUpdater {

    private static final String COMMAND = "org.benchlore.ui.appearance";
    private static final String MODE = "mode";

    @Override
    public Object execute(ExecutionEvent event) {
        var window = HandlerUtil.getActiveWorkbenchWindow(event);
        var mode = Appearance.Mode.valueOf(event.getParameter(MODE).toUpperCase(Locale.ROOT));
        window.getService(Appearance.class).choose(mode);
        window.getService(ICommandService.class).refreshElements(COMMAND, null);
        return null;
    }

    @Override
    public void updateElement(UIElement element, Map parameters) {
        var mode = PlatformUI.getWorkbench().getService(Appearance.class).mode();
        element.setChecked(mode.name().equalsIgnoreCase(String.valueOf(parameters.get(MODE))));
    }
}
