// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.eclipse.ui.IWorkbenchWindow;

/** Asks what becomes of unsaved work before a library is left. */
final class Leaving {

    private Leaving() {
    }

    /** Offers to save; tells whether the library may be left. What is not saved then is dropped with its editor. */
    static boolean isAllowed(IWorkbenchWindow window) {
        var page = window.getActivePage();
        return page == null || page.saveAllEditors(true);
    }
}
