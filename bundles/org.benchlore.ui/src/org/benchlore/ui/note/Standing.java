// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.note;

import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.edit.EditInput;
import org.benchlore.ui.search.SearchView;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;

/** Where somebody stands in the window: what is selected in the active part, else what the front editor shows. */
public final class Standing {

    private final IWorkbenchPage page;
    private final Library library;

    /**
     * Makes it.
     *
     * @param page the page of the window
     * @param library the open library
     */
    public Standing(IWorkbenchPage page, Library library) {
        this.page = page;
        this.library = library;
    }

    /**
     * Returns the element in front.
     *
     * @return where it stands, or empty
     */
    public Optional<Address> element() {
        return of(page.getActivePart()).or(() -> of(page.getActiveEditor()));
    }

    /**
     * Returns what stands in the search field, if that is where somebody works.
     *
     * @return the text, or empty words
     */
    public String typed() {
        return page.findView(Ids.SEARCH_VIEW) instanceof SearchView search && page.getActivePart() == search
                ? search.typed() : "";
    }

    private Optional<Address> of(IWorkbenchPart part) {
        if (part instanceof IEditorPart editor && editor.getEditorInput() instanceof EditInput input) {
            return library.catalogue().entry(input.path()).flatMap(entry -> entry.row()).map(Row::address);
        }
        return part == null ? Optional.empty() : Optional.ofNullable(part.getAdapter(Address.class));
    }
}
