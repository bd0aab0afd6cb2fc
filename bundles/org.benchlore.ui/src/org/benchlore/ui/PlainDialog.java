// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;

/** A dialog with a title that can be made larger and does not keep whoever opened it waiting. */
public abstract class PlainDialog extends Dialog {

    private final String title;

    /**
     * Makes a dialog.
     *
     * @param shell the window that it stands over
     * @param title its title
     */
    protected PlainDialog(Shell shell, String title) {
        super(shell);
        this.title = title;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setBlockOnOpen(false);
    }

    @Override
    protected final void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected final boolean isResizable() {
        return true;
    }
}
