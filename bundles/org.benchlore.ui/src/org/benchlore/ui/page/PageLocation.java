// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page;

import org.eclipse.ui.IMemento;
import org.eclipse.ui.INavigationLocation;
import org.eclipse.ui.NavigationLocation;

/** A page in the history of pages, to go back to. */
final class PageLocation extends NavigationLocation {

    PageLocation(PageEditor editor) {
        super(editor);
    }

    @Override
    public void restoreLocation() {
        // The history has brought the page to the front; it is where it was.
    }

    @Override
    public boolean mergeInto(INavigationLocation current) {
        return current instanceof PageLocation other && getInput() != null && getInput().equals(other.getInput());
    }

    @Override
    public void update() {
        // A page is one place.
    }

    @Override
    public void saveState(IMemento memento) {
        // The history keeps the input.
    }

    @Override
    public void restoreState(IMemento memento) {
        // The history keeps the input.
    }
}
