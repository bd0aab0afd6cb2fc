// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogueFileTest {

    @TempDir
    Path folder;

    @Test
    void whatIsKeptIsWhatWasKnown() throws Exception {
        try (var library = Library.open(TestLibrary.demonstration(), folder, new NullProgressMonitor())) {
            var kept = new CatalogueFile(folder.resolve("catalogue")).read();
            assertEquals(List.copyOf(library.catalogue().entries()), List.copyOf(kept.values()));
        }
    }

    @Test
    void anUnchangedFileIsNotReadAgain() throws Exception {
        var files = new TestLibrary(folder).note("note-2026-one-aaaa", "", "");
        files.open().close();
        var note = files.root().resolve("notes/2026/note-2026-one-aaaa.xmi");
        var time = Files.getLastModifiedTime(note);
        var text = Files.readString(note);
        Files.writeString(note, text.replace("A note", "B note"));
        Files.setLastModifiedTime(note, time);
        try (var library = files.open()) {
            assertEquals("A note", library.catalogue().byId("note-2026-one-aaaa").orElseThrow().title());
        }
    }

    @Test
    void aDamagedCatalogueIsReadAsNoneAndNothingIsLost() throws Exception {
        var files = new TestLibrary(folder).note("note-2026-one-aaaa", "", "");
        files.open().close();
        var kept = files.cache().resolve("catalogue");
        var bytes = Files.readAllBytes(kept);
        var random = new Random(7);
        for (int i = 0; i < 200; i++) {
            var damaged = random.nextBoolean() ? java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes.clone();
            if (damaged.length > 0) {
                damaged[random.nextInt(damaged.length)] ^= (byte) (1 + random.nextInt(255));
            }
            Files.write(kept, damaged);
            assertTrue(new CatalogueFile(kept).read().isEmpty());
        }
        try (var library = files.open()) {
            assertEquals(2, library.catalogue().rows().count());
        }
    }
}
