// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.nio.file.Path;

import org.benchlore.model.Address;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;

/** Brings back the pages that were open when the program ended. */
public final class ElementInputFactory implements IElementFactory {

    static final String ID = "org.benchlore.ui.elementInput";

    private static final String LIBRARY = "library";
    private static final String ADDRESS = "address";
    private static final String TITLE = "title";

    static void save(ElementInput input, IMemento memento) {
        memento.putString(LIBRARY, input.library().toString());
        memento.putString(ADDRESS, input.address().toString());
        memento.putString(TITLE, input.getName());
    }

    @Override
    public IAdaptable createElement(IMemento memento) {
        var library = memento.getString(LIBRARY);
        var address = memento.getString(ADDRESS);
        var title = memento.getString(TITLE);
        if (library == null || address == null || title == null) {
            return null;
        }
        try {
            return new ElementInput(Path.of(library), Address.parse(address), title);
        } catch (IllegalArgumentException e) {
            return null;
        }
    }
}
