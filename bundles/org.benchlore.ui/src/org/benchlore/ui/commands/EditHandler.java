// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.commands;

import org.benchlore.model.Address;
import org.benchlore.ui.edit.EditOpener;
import org.benchlore.ui.session.LibrarySession;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the editor of what is selected in the active part, else of the page that is read. */
public final class EditHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        var page = HandlerUtil.getActiveWorkbenchWindow(event).getActivePage();
        var address = address(page.getActivePart());
        if (address == null) {
            address = address(page.getActiveEditor());
        }
        if (address != null) {
            new EditOpener(page).edit(address);
        }
        return null;
    }

    private static Address address(IWorkbenchPart part) {
        return part == null ? null : part.getAdapter(Address.class);
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(LibrarySession.class).current().isPresent());
    }
}
