// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;

/** Says once, in one plain sentence, that something went wrong, and logs it once. */
public final class Failures {

    private Failures() {
    }

    /**
     * Logs a failure and shows it in the window; may be called from any thread and does not wait.
     *
     * @param title what did not work
     * @param sentence what happened and what to do
     * @param cause what brought it about
     */
    public static void show(String title, String sentence, Throwable cause) {
        log(sentence, cause);
        var display = Display.getDefault();
        display.asyncExec(() -> MessageDialog.openError(display.getActiveShell(), title, sentence));
    }

    /**
     * Logs a failure.
     *
     * @param sentence what happened and what to do
     * @param cause what brought it about
     */
    public static void log(String sentence, Throwable cause) {
        ILog.of(Failures.class).error(sentence, cause);
    }
}
