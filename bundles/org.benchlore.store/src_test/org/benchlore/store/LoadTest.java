// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.benchlore.model.BookFactory;
import org.benchlore.model.TopElement;
import org.benchlore.store.FileProblem.Severity;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoadTest {

    private static final String ID = "note-2026-bad-aaaa";
    private static final String PATH = "notes/2026/" + ID + ".xmi";

    @TempDir
    Path folder;

    private TestLibrary files;

    @BeforeEach
    void write() throws Exception {
        files = new TestLibrary(folder).note("note-2026-good-bbbb", "", "");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "meter='12x4 km'      | ''                        | 12x4",
        "status='PROVED'      | ''                        | PROVED",
        "statsu='SEEN'        | ''                        | statsu",
        "date='2026-02-30'    | ''                        | 2026-02-30",
        "''                   | <colour>red</colour>      | colour",
        "''                   | <!-- was here -->         | comment",
        "''                   | <?hint x?>                | processing instruction",
        "''                   | stray words               | words between",
        "''                   | <text>again</text>        | 'text' twice",
        "finding='a'          | <finding>b</finding>      | 'finding' twice",
        "xmi:id='x'           | ''                        | xmi:id",
        "''                   | <cause>oil</cause>        | words between",
        "xsi:schemaLocation='urn:benchlore:book:1 file:/etc/book.ecore' | '' | schema location",
    })
    void whatCannotBeReadMakesTheFileReadOnlyAndSaysWhere(String attributes, String body, String mentioned)
            throws Exception {
        files.note(ID, attributes.replace('\'', '"').replace("\"\"", ""), body.replace("''", ""));
        try (var library = files.open()) {
            var file = library.file(PATH).orElseThrow();
            assertTrue(file.root().isPresent());
            assertFalse(file.isWhole());
            var problem = file.problems().get(0);
            assertEquals(Severity.READ_ONLY, problem.severity());
            assertEquals(2, problem.line());
            assertTrue(problem.reason().contains(mentioned), problem.reason());
        }
    }

    @Test
    void aFileThatCannotBeReadWholeIsNeverSavedOver() throws Exception {
        files.note(ID, "statsu=\"SEEN\"", "");
        var before = Files.readString(files.root().resolve(PATH));
        try (var library = files.open()) {
            var file = library.file(PATH).orElseThrow();
            var copy = EcoreUtil.copy(file.root().orElseThrow());
            copy.setTitle("Changed");
            var failure = assertThrows(LibraryException.class, () -> library.save(copy, Optional.of(file.hash())));
            assertTrue(failure.getMessage().contains("statsu"), failure.getMessage());
        }
        assertEquals(before, Files.readString(files.root().resolve(PATH)));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<book:FieldNote %s id=\"note-2026-bad-aaaa\" formatVersion=\"1\"><text>cut",
        "not a file of this kind",
        "",
        "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><book:FieldNote %s id=\"note-2026-bad-aaaa\""
            + " formatVersion=\"1\"><text>&e;</text></book:FieldNote>",
        "<other:Thing xmlns:other=\"urn:other\" id=\"x\"/>",
        "<xmi:XMI %s><book:Part id=\"a\"/><book:Part id=\"b\"/></xmi:XMI>",
        "<book:FieldNote %s formatVersion=\"1\"><text>no id</text></book:FieldNote>",
        "<book:FieldNote %s id=\"Not An Id\" formatVersion=\"1\"><text>bad id</text></book:FieldNote>"
    })
    void anUnreadableFileIsSetApartWhileTheRestLoads(String xml) throws Exception {
        files.put(PATH, xml);
        try (var library = files.open()) {
            assertEquals(2, library.catalogue().rows().count());
            var problems = library.problems();
            assertFalse(problems.isEmpty());
            assertEquals(Severity.UNREADABLE, problems.get(problems.size() - 1).severity());
            assertEquals(PATH, problems.get(0).path());
        }
    }

    @Test
    void anEntityOfAForeignFileIsNotRead() throws Exception {
        var secret = Files.writeString(folder.resolve("secret.txt"), "secret words");
        files.put(PATH, "<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]><book:FieldNote %s id=\"" + ID
                + "\" formatVersion=\"1\"><text>&e;</text></book:FieldNote>");
        try (var library = files.open()) {
            assertTrue(library.file(PATH).orElseThrow().root().isEmpty());
        }
    }

    @Test
    void binaryRubbishIsSetApart() throws Exception {
        files.put(PATH, new byte[] {0, 1, 2, (byte) 0xff, (byte) 0xfe, 60, 33});
        try (var library = files.open()) {
            assertEquals(Severity.UNREADABLE, library.problems().get(0).severity());
        }
    }

    @Test
    void anElementInThePlaceOfAReferenceMakesTheFileReadOnly() throws Exception {
        files.note(ID, "", "<cause/>");
        try (var library = files.open()) {
            var file = library.file(PATH).orElseThrow();
            assertFalse(file.isWhole());
            assertTrue(file.problems().get(0).reason().contains("an element of its own"));
        }
    }

    @Test
    void aBadDateIsAnsweredWithHowToWriteIt() throws Exception {
        files.note(ID, "date=\"2026-02-30\"", "");
        try (var library = files.open()) {
            assertEquals("'date' cannot be '2026-02-30': '2026-02-30' is no day: write it as 2026-11-25",
                    library.file(PATH).orElseThrow().problems().get(0).reason());
        }
    }

    @Test
    void anUnknownWordIsAnsweredWithThePermittedOnes() throws Exception {
        files.note(ID, "status=\"PROVED\"", "");
        try (var library = files.open()) {
            assertTrue(library.file(PATH).orElseThrow().problems().get(0).reason()
                    .endsWith("write one of UNSORTED, SUSPECTED, SEEN, HELD, RULED_OUT, SUPERSEDED"));
        }
    }

    @Test
    void aMissingFormatVersionIsReadOnly() {
        var file = new BookFormat().read(PATH, ("<book:FieldNote xmlns:book=\"urn:benchlore:book:1\" id=\"" + ID
                + "\"><text>x</text></book:FieldNote>").getBytes(StandardCharsets.UTF_8));
        assertFalse(file.isWhole());
        assertTrue(file.problems().get(0).reason().contains("formatVersion"));
    }

    @Test
    void aNewerFormatVersionIsReadOnly() throws Exception {
        files.put("parts/seal.xmi", "<book:Part %s id=\"seal\" formatVersion=\"2\" title=\"Seal\"/>");
        try (var library = files.open()) {
            assertFalse(library.file("parts/seal.xmi").orElseThrow().isWhole());
        }
    }

    @Test
    void aMissingFolderIsOnePlainSentence() {
        var missing = folder.resolve("nowhere");
        var failure = assertThrows(LibraryException.class,
                () -> Library.open(missing, folder.resolve("cache"), new NullProgressMonitor()));
        assertTrue(failure.getMessage().startsWith("There is no library at "), failure.getMessage());
    }

    @Test
    void aFolderWithoutFilesOfALibraryIsNone() throws Exception {
        var empty = Files.createDirectories(folder.resolve("empty"));
        assertThrows(LibraryException.class,
                () -> Library.open(empty, folder.resolve("cache"), new NullProgressMonitor()));
    }

    @Test
    void longTextsKeepTheirLineBreaks() {
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setId(ID);
        note.setFormatVersion(1);
        note.setText("first line\n\n  <indented> & \"quoted\"\nlast — line");
        var bytes = new BookFormat().write(PATH, note);
        var back = new BookFormat().read(PATH, bytes).root().map(TopElement.class::cast).orElseThrow();
        assertTrue(EcoreUtil.equals(note, back), new String(bytes, StandardCharsets.UTF_8));
        assertFalse(new String(bytes, StandardCharsets.UTF_8).contains("\r"));
    }
}
