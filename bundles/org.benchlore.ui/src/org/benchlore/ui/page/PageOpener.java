// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.benchlore.model.Address;
import org.benchlore.store.Row;
import org.benchlore.ui.Failures;
import org.benchlore.ui.Ids;
import org.benchlore.ui.session.LibrarySession;
import org.benchlore.ui.session.Opened;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/** Opens reading pages; a page that is open already comes to the front. */
public final class PageOpener {

    private final IWorkbenchPage page;
    private final LibrarySession session;

    /**
     * Makes an opener.
     *
     * @param page where pages open
     * @param session holds the library
     */
    public PageOpener(IWorkbenchPage page, LibrarySession session) {
        this.page = page;
        this.session = session;
    }

    /**
     * Opens the page of an element; an inner element is shown on the page of its file.
     *
     * @param address where the element stands
     */
    public void open(Address address) {
        session.current().ifPresent(opened -> open(opened, address));
    }

    private void open(Opened opened, Address address) {
        var library = opened.library().library();
        var row = library.catalogue().entry(address.path()).flatMap(entry -> entry.row());
        var top = row.map(Row::address).orElse(address);
        var input = new ElementInput(library.root(), top, row.map(Row::title).orElse(address.id()));
        try {
            var editor = page.openEditor(input, Ids.PAGE_EDITOR);
            if (editor instanceof PageEditor reading && !top.equals(address)) {
                reading.reveal(address);
            }
        } catch (PartInitException e) {
            Failures.show(Messages.openingFailed, e.getMessage(), e);
        }
    }
}
