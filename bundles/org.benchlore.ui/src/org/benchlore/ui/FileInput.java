// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui;

import java.nio.file.Path;
import java.util.Objects;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** Names a file of a library, which need not exist. Two inputs of one class for the same file are equal. */
public abstract class FileInput implements IEditorInput {

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
    protected FileInput(Path library, String path, String title) {
        this.library = library;
        this.path = path;
        this.title = title;
    }

    /**
     * Returns the library's folder.
     *
     * @return the folder
     */
    public final Path library() {
        return library;
    }

    /**
     * Returns the file.
     *
     * @return path below the library
     */
    public final String path() {
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
    public final boolean equals(Object other) {
        return other != null && other.getClass() == getClass() && other instanceof FileInput input
                && input.library.equals(library) && input.path.equals(path);
    }

    @Override
    public final int hashCode() {
        return Objects.hash(library, path);
    }
}
