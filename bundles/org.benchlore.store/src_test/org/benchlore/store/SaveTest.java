// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.BookFactory;
import org.benchlore.model.FieldNote;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveTest {

    private static final String ID = "note-2026-one-aaaa";
    private static final String PATH = "notes/2026/" + ID + ".xmi";

    @TempDir
    Path folder;

    private TestLibrary files;

    @BeforeEach
    void write() throws Exception {
        files = new TestLibrary(folder).note(ID, "", "");
    }

    @Test
    void everyFileOfTheDemonstrationLibraryIsSavedAsItWasLoaded() throws Exception {
        var format = new BookFormat();
        int count = 0;
        for (var path : LibraryFiles.list(TestLibrary.demonstration()).keySet()) {
            var bytes = Files.readAllBytes(TestLibrary.demonstration().resolve(path));
            assertArrayEquals(bytes, format.write(path, format.read(path, bytes).root().orElseThrow()), path);
            count++;
        }
        assertTrue(count > 50, count + " files");
    }

    @Test
    void aNewElementIsWrittenAtItsPathAndFound() throws Exception {
        try (var library = files.open()) {
            library.save(note("note-2026-new-bbbb"), Optional.empty());
            assertTrue(library.catalogue().byId("note-2026-new-bbbb").isPresent());
        }
        assertTrue(Files.exists(files.root().resolve("notes/2026/note-2026-new-bbbb.xmi")));
    }

    @Test
    void aSaveTellsListenersWhatChanged() throws Exception {
        try (var library = files.open()) {
            var told = new ArrayList<Changes>();
            library.onChange(told::add);
            library.save(note("note-2026-new-bbbb"), Optional.empty());
            assertEquals(1, told.size());
            assertEquals(Set.of("notes/2026/note-2026-new-bbbb.xmi"), told.get(0).changed());
        }
    }

    @Test
    void theSnapshotThatWasReadBeforeDoesNotChange() throws Exception {
        try (var library = files.open()) {
            var before = library.file(PATH).orElseThrow();
            var copy = (FieldNote) EcoreUtil.copy(before.root().orElseThrow());
            copy.setTitle("Changed");
            library.save(copy, Optional.of(before.hash()));
            assertEquals("A note", before.root().orElseThrow().getTitle());
            assertEquals("Changed", library.top(ID).orElseThrow().getTitle());
        }
    }

    @Test
    void aFileChangedOnTheDiskMeanwhileIsNotOverwritten() throws Exception {
        try (var library = files.open()) {
            var base = library.file(PATH).orElseThrow();
            files.note(ID, "date=\"2026-01-02\"", "");
            var other = Files.readString(files.root().resolve(PATH));
            var copy = EcoreUtil.copy(base.root().orElseThrow());
            var failure = assertThrows(LibraryException.class, () -> library.save(copy, Optional.of(base.hash())));
            assertTrue(failure.getMessage().contains("changed on the disk"), failure.getMessage());
            assertEquals(other, Files.readString(files.root().resolve(PATH)));
        }
    }

    @Test
    void anElementWithAnIdThatIsTakenIsNotWrittenAsNew() throws Exception {
        try (var library = files.open()) {
            assertThrows(LibraryException.class, () -> library.save(note(ID), Optional.empty()));
        }
    }

    @Test
    void whileAnotherHoldsTheLockNothingIsWritten() throws Exception {
        try (var library = files.open(); var other = LibraryLock.tryTake(files.root()).orElseThrow()) {
            var failure = assertThrows(LibraryException.class,
                    () -> library.save(note("note-2026-new-bbbb"), Optional.empty()));
            assertTrue(failure.getMessage().contains("another Benchlore"), failure.getMessage());
        }
        assertFalse(Files.exists(files.root().resolve("notes/2026/note-2026-new-bbbb.xmi")));
    }

    @Test
    void theHolderOfTheLockSaves() throws Exception {
        try (var library = files.open()) {
            assertTrue(library.holdLock());
            library.save(note("note-2026-new-bbbb"), Optional.empty());
            assertFalse(LibraryLock.tryTake(files.root()).isPresent());
        }
        try (var lock = LibraryLock.tryTake(files.root()).orElseThrow()) {
            assertTrue(Files.exists(files.root().resolve("notes/2026/note-2026-new-bbbb.xmi")));
        }
    }

    @Test
    void noTemporaryFileIsLeftBehind() throws Exception {
        try (var library = files.open()) {
            library.save(note("note-2026-new-bbbb"), Optional.empty());
        }
        try (var found = Files.list(files.root().resolve("notes/2026"))) {
            assertEquals(2, found.count());
        }
    }

    @Test
    void aLibraryThatCannotBeWrittenOpensAndRefusesToSave() throws Exception {
        Files.writeString(files.root().resolve(".benchlore"), "a file where the program's folder should be");
        try (var library = files.open()) {
            assertFalse(library.holdLock());
            var failure = assertThrows(LibraryException.class,
                    () -> library.save(note("note-2026-new-bbbb"), Optional.empty()));
            assertTrue(failure.getMessage().contains("cannot be written"), failure.getMessage());
        }
    }

    @Test
    void anOutsideChangeIsTakenInByARefresh() throws Exception {
        try (var library = files.open()) {
            assertTrue(library.refresh(new NullProgressMonitor()).isEmpty());
            files.note(ID, "date=\"2026-01-02\"", "");
            files.note("note-2026-two-cccc", "", "");
            assertEquals(Set.of(PATH, "notes/2026/note-2026-two-cccc.xmi"),
                    library.refresh(new NullProgressMonitor()).changed());
            Files.delete(files.root().resolve(PATH));
            assertEquals(Set.of(PATH), library.refresh(new NullProgressMonitor()).removed());
            assertTrue(library.top(ID).isEmpty());
        }
    }

    private static FieldNote note(String id) {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setId(id);
        note.setFormatVersion(BookFormat.VERSION);
        note.setText("what was learned");
        return note;
    }
}
