// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.nio.file.Path;
import java.util.Objects;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * Names the file that an editor edits, which need not exist yet. Two inputs for the same file of the same library are
 * equal. Editors are not opened again at the next start: what was not saved comes back as a draft.
 */
public final class EditInput implements IEditorInput {

    private final Path library;
    private final String path;
    private final String title;

    /**
     * Names a file.
     *
     * @param library the library's folder
     * @param path path of the file below it
     * @param title what its element is called
     */
    public EditInput(Path library, String path, String title) {
        this.library = library;
        this.path = path;
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
     * Returns the file.
     *
     * @return path below the library
     */
    public String path() {
        return path;
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
        return null;
    }

    @Override
    public String getToolTipText() {
        return title + " (" + path + ")";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EditInput input && input.library.equals(library) && input.path.equals(path);
    }

    @Override
    public int hashCode() {
        return Objects.hash(library, path);
    }
}
