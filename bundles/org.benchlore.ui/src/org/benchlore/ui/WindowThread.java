// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/**
 * Hands work to the window's thread on behalf of a control. Work that comes when the control or the whole window is
 * gone already is dropped, since there is nobody left to see it.
 */
public final class WindowThread {

    private final Control owner;
    private final Display display;

    /**
     * Makes it; to be called on the window's thread.
     *
     * @param owner a control that lives
     */
    public WindowThread(Control owner) {
        this.owner = owner;
        this.display = owner.getDisplay();
    }

    /**
     * Runs something soon on the window's thread; may be called from any thread.
     *
     * @param work what is run
     */
    public void run(Runnable work) {
        try {
            display.asyncExec(() -> {
                if (!owner.isDisposed()) {
                    work.run();
                }
            });
        } catch (SWTException e) {
            if (!display.isDisposed()) {
                throw e;
            }
        }
    }
}
