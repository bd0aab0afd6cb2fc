// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.pack;

import org.benchlore.workshop.OpenLibrary;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks what goes into a pack and makes it. */
public final class PackAction {

    private static final int WIDTH = 700;
    private static final int HEIGHT = 500;

    private final Shell shell;
    private final OpenLibrary library;

    /**
     * Makes the action.
     *
     * @param shell the window
     * @param library the library that is packed
     */
    public PackAction(Shell shell, OpenLibrary library) {
        this.shell = shell;
        this.library = library;
    }

    /** Opens the wizard and does not wait for it. */
    public void run() {
        var dialog = new WizardDialog(shell, new PackWizard(library, made -> new ResultDialog(shell, Messages.packTitle,
                PackWords.made(made), PackWords.leftOut(made.leftOut())).open()));
        dialog.setMinimumPageSize(WIDTH, HEIGHT);
        dialog.setBlockOnOpen(false);
        dialog.open();
    }
}
