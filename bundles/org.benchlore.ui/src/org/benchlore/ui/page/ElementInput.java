// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.nio.file.Path;

import org.benchlore.model.Address;
import org.benchlore.ui.FileInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

/** Names the element that a reading page shows; the page is opened again at the next start. */
public final class ElementInput extends FileInput implements IPersistableElement {

    private final Address address;

    /**
     * Names an element.
     *
     * @param library the library's folder
     * @param address the top-level element
     * @param title what it is called
     */
    public ElementInput(Path library, Address address, String title) {
        super(library, address.path(), title);
        this.address = address;
    }

    /**
     * Returns where the element stands.
     *
     * @return the top-level element
     */
    public Address address() {
        return address;
    }

    @Override
    public IPersistableElement getPersistable() {
        return this;
    }

    @Override
    public void saveState(IMemento memento) {
        ElementInputFactory.save(this, memento);
    }

    @Override
    public String getFactoryId() {
        return ElementInputFactory.ID;
    }
}
