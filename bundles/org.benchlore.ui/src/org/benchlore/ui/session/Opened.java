// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.session;

import java.util.List;

import org.benchlore.store.FileProblem;
import org.benchlore.workshop.OpenLibrary;

/**
 * The library that the window shows, at one moment.
 *
 * @param library the open library
 * @param problems what was wrong with its files at that moment
 */
public record Opened(OpenLibrary library, List<FileProblem> problems) {

    /**
     * Looks at a library.
     *
     * @param library an open library
     * @return the library with its problems as they are now
     */
    static Opened of(OpenLibrary library) {
        return new Opened(library, List.copyOf(library.library().problems()));
    }
}
