// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tests;

import java.nio.file.Files;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** A test of editors in a library of its own. */
abstract class EditorTest {

    final WindowDriver window = new WindowDriver();
    final EditDriver edit = new EditDriver(window);
    LibraryCopy library;

    @BeforeEach
    final void openLibrary() throws Exception {
        library = LibraryCopy.open(window);
    }

    @AfterEach
    final void closeLibrary() throws Exception {
        edit.closeAll();
        library.close();
    }

    final String read(String path) throws Exception {
        return Files.readString(library.file(path));
    }
}
