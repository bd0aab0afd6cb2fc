// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.look;

import org.benchlore.ui.WindowThread;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.themes.IThemeManager;

/**
 * Colours of the window that follow the theme. They are declared in plugin.xml and set for the dark theme by a
 * stylesheet.
 */
public final class Palette {

    private static final String PREFIX = "org.benchlore.ui.";

    private final IThemeManager themes = PlatformUI.getWorkbench().getThemeManager();

    /**
     * Returns a colour.
     *
     * @param name its name, such as {@code LINK}
     * @return the colour of the theme that is active now
     */
    public Color color(String name) {
        return registry().get(PREFIX + name);
    }

    private ColorRegistry registry() {
        return themes.getCurrentTheme().getColorRegistry();
    }

    /**
     * Does something whenever colours change, as long as a control lives.
     *
     * @param owner the control
     * @param action is run on the window's thread
     */
    public void onChange(Control owner, Runnable action) {
        var thread = new WindowThread(owner);
        IPropertyChangeListener listener = event -> thread.run(action);
        themes.addPropertyChangeListener(listener);
        owner.addDisposeListener(event -> themes.removePropertyChangeListener(listener));
    }
}
