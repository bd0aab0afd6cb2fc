// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Keys and names of controls, for those who work without a mouse or without seeing the window. */
public final class Keys {

    private Keys() {
    }

    /**
     * Does something when a key is pressed in a control, instead of what the key does there otherwise.
     *
     * @param control the control
     * @param key a key code of SWT
     * @param action what is done
     */
    public static void on(Control control, int key, Runnable action) {
        control.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == key && (event.stateMask & SWT.MODIFIER_MASK) == 0) {
                event.doit = false;
                action.run();
            }
        });
    }

    /**
     * Gives a control the name that is read out.
     *
     * @param control the control
     * @param name what it is
     */
    public static void name(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }
        });
    }
}
