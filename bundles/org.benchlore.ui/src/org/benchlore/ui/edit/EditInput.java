// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit;

import java.nio.file.Path;

import org.benchlore.ui.FileInput;

/**
 * Names the file that an editor edits. Editors are not opened again at the next start: what was not saved comes back as
 * a draft.
 */
public final class EditInput extends FileInput {

    /**
     * Names a file.
     *
     * @param library the library's folder
     * @param path path of the file below it
     * @param title what its element is called
     */
    public EditInput(Path library, String path, String title) {
        super(library, path, title);
    }
}
