// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.benchlore.model.FieldNote;
import org.benchlore.model.Machine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How files fit together: references, ids and folders. */
class FitTest {

    private static final String ID = "note-2026-one-aaaa";

    @TempDir
    Path folder;

    private TestLibrary files;

    @BeforeEach
    void write() throws Exception {
        files = new TestLibrary(folder).put("machines/lifter.xmi",
                "<book:Machine %s id=\"lifter\" formatVersion=\"1\" title=\"Lifter\">"
                        + "<components id=\"pump\" title=\"Pump\"/></book:Machine>");
    }

    @Test
    void aReferenceIsFollowedByTheLibraryOnly() throws Exception {
        files.note(ID, "", "<component href=\"../../machines/lifter.xmi#pump\"/>");
        try (var library = files.open()) {
            var note = (FieldNote) library.top(ID).orElseThrow();
            assertTrue(note.getComponent().eIsProxy());
            var pump = library.resolve(note.getComponent()).orElseThrow();
            assertEquals("Lifter", ((Machine) pump.eContainer()).getTitle());
            assertEquals("machines/lifter.xmi#pump", library.addressOf(note.getComponent()).orElseThrow().toString());
        }
    }

    @Test
    void whatRefersToAFileIsFoundFromTheFacts() throws Exception {
        files.note(ID, "", "<component href=\"../../machines/lifter.xmi#pump\"/>");
        try (var library = files.open()) {
            assertEquals(List.of(ID), library.catalogue().referringTo("machines/lifter.xmi").map(Row::id).toList());
            var row = library.catalogue().byId(ID).orElseThrow();
            assertEquals("[machines/lifter.xmi#lifter]", row.machines().toString());
        }
    }

    @Test
    void anElementNamedInATextIsReferredTo() throws Exception {
        files.note(ID, "", "<finding>See {machine:lifter}, {step:step-x} and {part:seal}; {nothing} else.</finding>");
        try (var library = files.open()) {
            assertEquals(List.of(ID), library.catalogue().referringTo("machines/lifter.xmi").map(Row::id).toList());
            assertProblem(library, "parts/seal.xmi#seal leads to nothing");
            assertEquals(1, library.problems().size());
        }
    }

    @Test
    void aReferenceToNothingIsReported() throws Exception {
        files.note(ID, "", "<component href=\"../../machines/lifter.xmi#pmup\"/>");
        try (var library = files.open()) {
            assertProblem(library, "machines/lifter.xmi#pmup leads to nothing");
            var note = (FieldNote) library.top(ID).orElseThrow();
            assertTrue(library.resolve(note.getComponent()).isEmpty());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../../secret.xmi#x", "file:/etc/passwd#x", "http://example.org/a.xmi#x",
        "../../../../../../../../etc/passwd#x", "//host/a.xmi#x", "library:/%2e%2e/secret.xmi#x",
        "platform:/plugin/org.benchlore.model/model/book.ecore#//Part"})
    void aReferenceOutOfTheLibraryIsNotFollowed(String href) throws Exception {
        Files.writeString(folder.resolve("secret.xmi"), "<book:Part xmlns:book=\"urn:benchlore:book:1\" id=\"x\"/>");
        files.note(ID, "", "<component href=\"" + href + "\"/>");
        try (var library = files.open()) {
            var note = (FieldNote) library.top(ID).orElseThrow();
            assertTrue(library.resolve(note.getComponent()).isEmpty());
            assertFalse(library.problems().isEmpty());
        }
    }

    @Test
    void aLinkToAFolderOutsideIsNotFollowed() throws Exception {
        var outside = Files.createDirectories(folder.resolve("outside"));
        Files.writeString(outside.resolve("x.xmi"), "<book:Part xmlns:book=\"urn:benchlore:book:1\" id=\"x\"/>");
        Files.createSymbolicLink(files.root().resolve("parts"), outside);
        try (var library = files.open()) {
            assertTrue(library.catalogue().byId("x").isEmpty());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<machine href='../../shop.xmi#shop'/>            | must lead into a machine",
        "<component href='../../parts/pump.xmi#pump'/>     | must lead into a machine",
        "<author href='../../machines/lifter.xmi#pump'/>   | must lead into a shop",
        "<machine href='../../machines/lifter.xmi'/>       | does not say to which element"})
    void aReferenceToAnotherKindIsReported(String body, String words) throws Exception {
        files.note(ID, "", body.replace('\'', '"'));
        try (var library = files.open()) {
            assertProblem(library, words);
        }
    }

    @Test
    void whatIsMissingIsReported() throws Exception {
        files.put("notes/2026/note-2026-two-bbbb.xmi", "<book:FieldNote %s id=\"note-2026-two-bbbb\""
                + " formatVersion=\"1\"><addWhileDoing extra=\"5 min\"/></book:FieldNote>");
        try (var library = files.open()) {
            assertProblem(library, "FieldNote has no 'text'");
            assertProblem(library, "Addition has no id");
            assertTrue(library.file("notes/2026/note-2026-two-bbbb.xmi").orElseThrow().isWhole());
        }
    }

    @Test
    void anIdUsedTwiceInTheLibraryIsReportedOnce() throws Exception {
        files.put("parts/lifter.xmi", "<book:Part %s id=\"lifter\" formatVersion=\"1\" title=\"Same id\"/>");
        try (var library = files.open()) {
            assertEquals(1, library.problems().size());
            assertProblem(library, "'lifter' is used by machines/lifter.xmi too");
        }
    }

    @Test
    void anIdUsedTwiceInAFileIsReported() throws Exception {
        files.put("machines/second.xmi", "<book:Machine %s id=\"second\" formatVersion=\"1\" title=\"S\">"
                + "<components id=\"a\"/><components id=\"a\"/></book:Machine>");
        try (var library = files.open()) {
            assertProblem(library, "'a' is used twice");
        }
    }

    @Test
    void aFileInTheWrongFolderIsReportedWithTheRightOne() throws Exception {
        files.put("parts/note-2026-lost-cccc.xmi", "<book:FieldNote %s id=\"note-2026-lost-cccc\" formatVersion=\"1\""
                + " title=\"Lost\"><text>x</text></book:FieldNote>");
        try (var library = files.open()) {
            assertProblem(library, "belongs at notes/2026/note-2026-lost-cccc.xmi");
        }
    }

    @Test
    void theDemonstrationLibraryFitsTogether() throws Exception {
        try (var library = Library.open(TestLibrary.demonstration(), folder.resolve("cache"),
                new org.eclipse.core.runtime.NullProgressMonitor())) {
            assertEquals(List.of(), library.problems());
            assertTrue(library.catalogue().rows().allMatch(Row::invented), "everything in it says that it is invented");
            for (var kind : org.benchlore.model.Kind.values()) {
                assertTrue(library.catalogue().rows(kind).findAny().isPresent(), kind + " has an example");
            }
        }
    }

    private static void assertProblem(Library library, String words) {
        assertTrue(library.problems().stream().anyMatch(problem -> problem.reason().contains(words)),
                () -> "expected '" + words + "' in " + library.problems());
    }
}
