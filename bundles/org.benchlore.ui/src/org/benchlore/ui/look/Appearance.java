// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.look;

import java.util.Locale;

import org.benchlore.ui.session.SessionMemory;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/** Whether the window is light or dark. */
public final class Appearance {

    /** Theme of the light window. */
    public static final String LIGHT_THEME = "org.eclipse.e4.ui.css.theme.e4_default";
    /** Theme of the dark window. */
    public static final String DARK_THEME = "org.eclipse.e4.ui.css.theme.e4_dark";

    /** What can be chosen. */
    public enum Mode {
        /** As the system is, and follow it. */
        SYSTEM,
        /** Light. */
        LIGHT,
        /** Dark. */
        DARK
    }

    private final IThemeEngine engine;
    private final SessionMemory memory;

    /**
     * Makes the choice.
     *
     * @param engine styles the window
     * @param memory remembers what was chosen
     */
    public Appearance(IThemeEngine engine, SessionMemory memory) {
        this.engine = engine;
        this.memory = memory;
    }

    /**
     * Returns what was chosen.
     *
     * @return the mode, {@link Mode#SYSTEM} if nothing was chosen
     */
    public Mode mode() {
        for (var mode : Mode.values()) {
            if (word(mode).equals(memory.appearance())) {
                return mode;
            }
        }
        return Mode.SYSTEM;
    }

    /**
     * Chooses and styles the window anew.
     *
     * @param mode what is chosen
     */
    public void choose(Mode mode) {
        memory.rememberAppearance(word(mode));
        apply();
    }

    /** Follows the system's settings while the program runs, where that was chosen. */
    public void follow() {
        Display.getCurrent().addListener(SWT.Settings, event -> apply());
        apply();
    }

    private void apply() {
        var wanted = isDark() ? DARK_THEME : LIGHT_THEME;
        var active = engine.getActiveTheme();
        if (active == null || !active.getId().equals(wanted)) {
            engine.setTheme(wanted, true);
        }
    }

    private boolean isDark() {
        return switch (mode()) {
            case SYSTEM -> Display.isSystemDarkTheme();
            case DARK -> true;
            case LIGHT -> false;
        };
    }

    private static String word(Mode mode) {
        return mode.name().toLowerCase(Locale.ROOT);
    }
}
