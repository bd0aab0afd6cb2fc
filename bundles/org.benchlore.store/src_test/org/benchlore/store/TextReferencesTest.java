// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextReferencesTest {

    @TempDir
    Path folder;

    @Test
    void aTextIsReadWithTitlesForItsElements() throws Exception {
        new TestLibrary(folder).put("parts/chain.xmi", "<book:Part %s id=\"chain\" formatVersion=\"1\" title=\"Chain $1\"/>");
        try (var library = new TestLibrary(folder).open()) {
            assertEquals("Fit Chain $1 and gone as in another step.",
                    TextReferences.plain("Fit {part:chain} and {part:gone} as in {step:step-a}.", library.catalogue()));
            assertEquals("", TextReferences.plain(null, library.catalogue()));
        }
    }
}
