// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.welcome;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** Stands for the welcome page, of which there is one. */
record WelcomeInput() implements IEditorInput {

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
        return Messages.name;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return Messages.name;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
