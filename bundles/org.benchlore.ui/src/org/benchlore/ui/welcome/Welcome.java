// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.welcome;

import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/** Shows the welcome page in a window. */
public final class Welcome {

    private final IWorkbenchWindow window;

    /**
     * Makes it.
     *
     * @param window where the page is shown
     */
    public Welcome(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Shows the page, or brings it to the front. */
    public void show() {
        var page = window.getActivePage();
        if (page == null) {
            return;
        }
        try {
            page.openEditor(new WelcomeInput(), Ids.WELCOME_EDITOR);
        } catch (PartInitException e) {
            Failures.log(e.getMessage(), e);
        }
    }
}
