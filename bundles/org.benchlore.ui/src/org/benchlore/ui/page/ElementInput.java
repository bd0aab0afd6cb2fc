// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import java.nio.file.Path;
import java.util.Objects;

import org.benchlore.model.Address;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

/** Names the element that a reading page shows. Two inputs for the same file of the same library are equal. */
public final class ElementInput implements IEditorInput, IPersistableElement {

    private final Path library;
    private final Address address;
    private final String title;

    /**
     * Names an element.
     *
     * @param library the library's folder
     * @param address the top-level element
     * @param title what it is called
     */
    public ElementInput(Path library, Address address, String title) {
        this.library = library;
        this.address = address;
        this.title = title;
    }

    /**
     * Returns the library's folder.
     *
     * @return the folder
     */
    public Path library() {
        return library;
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
    public boolean exists() {
        return false;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return title;
    }

    @Override
    public IPersistableElement getPersistable() {
        return this;
    }

    @Override
    public String getToolTipText() {
        return title + " (" + address.path() + ")";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public void saveState(IMemento memento) {
        ElementInputFactory.save(this, memento);
    }

    @Override
    public String getFactoryId() {
        return ElementInputFactory.ID;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ElementInput input && input.library.equals(library)
                && input.address.path().equals(address.path());
    }

    @Override
    public int hashCode() {
        return Objects.hash(library, address.path());
    }
}
