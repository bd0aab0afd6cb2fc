// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.benchlore.search.Query;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewNoteTest {

    private static final Clock NOON = Clock.fixed(Instant.parse("2026-05-07T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path home;

    private Workshop workshop;
    private OpenLibrary open;
    private NewNote notes;

    @BeforeEach
    void make() throws Exception {
        workshop = new Workshop(Places.below(home));
        workshop.create(home.resolve("ours"), "Our shop");
        open(home.resolve("ours"));
    }

    private void open(Path folder) throws LibraryException {
        open = workshop.open(folder, Use.WORK, new NullProgressMonitor());
        notes = new NewNote(open, NOON, new Random(7));
    }

    private void openDemonstration() throws LibraryException {
        open.close();
        open(workshop.demonstration());
    }

    @AfterEach
    void close() {
        open.close();
    }

    private Row write(String text) throws LibraryException {
        return notes.write(text, Optional.empty(), Optional.empty());
    }

    private FieldNote read(Row row) {
        var file = open.library().file(row.path()).orElseThrow();
        assertTrue(file.isWhole(), () -> file.problems().toString());
        return (FieldNote) file.root().orElseThrow();
    }

    @Test
    void onlyATextIsNeeded() throws Exception {
        var note = read(write("Tipper latch squeaks\nwhen it is wet"));
        assertEquals("Tipper latch squeaks\nwhen it is wet", note.getText());
        assertEquals(NoteStatus.UNSORTED, note.getStatus());
        assertEquals(LocalDate.of(2026, 5, 7), note.getDate());
        assertFalse(note.isInvented());
        assertEquals(List.of(), open.library().problems());
    }

    @Test
    void idTellsYearAndWords() throws Exception {
        var id = write("Tipper latch squeaks when it is wet, and again after greasing").id();
        assertTrue(id.matches("note-2026-tipper-latch-squeaks-when-it-is-wet-and-[a-z0-9]{4}"), id);
    }

    @Test
    void noteIsFoundAtOnce() throws Exception {
        var row = write("Tipper latch wibbles when wet");
        assertEquals(row.id(), open.search().find(Query.of("wibbles")).hits().get(0).row().id());
    }

    @Test
    void notesOfTheSameWordsHaveIdsOfTheirOwn() throws Exception {
        var ids = new HashSet<String>();
        for (int i = 0; i < 30; i++) {
            ids.add(write("same words").id());
        }
        assertEquals(30, ids.size());
    }

    @Test
    void anIdThatIsTakenIsNotTakenAgain() throws Exception {
        var first = new NewNote(open, NOON, new Random(1)).write("same words", Optional.empty(), Optional.empty());
        var second = new NewNote(open, NOON, new Random(1)).write("same words", Optional.empty(), Optional.empty());
        assertFalse(first.id().equals(second.id()), first.id());
    }

    @Test
    void machineAndKnownCodeAreReferences() throws Exception {
        openDemonstration();
        var row = notes.write("wibbles", Optional.of("dravholm-hl26"), Optional.of("4c17"));
        assertEquals(List.of("dravholm-hl26"), row.machines().stream().map(machine -> machine.id()).toList());
        assertEquals(1, read(row).getCodes().size());
        assertEquals(List.of(), read(row).getCodesAsWritten());
    }

    @Test
    void unknownCodeIsKeptAsWritten() throws Exception {
        var row = notes.write("wibbles", Optional.empty(), Optional.of(" 9F-zz 31 "));
        assertEquals(List.of("9F-zz 31"), read(row).getCodesAsWritten());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n\t ", "\u0000\u0007"})
    void noteWithoutWordsIsRefused(String text) {
        var failure = assertThrows(LibraryException.class, () -> write(text));
        assertEquals("The note was not saved: write what was learned", failure.getMessage());
    }

    @Test
    void unknownMachineIsRefused() {
        var failure = assertThrows(LibraryException.class,
                () -> notes.write("wibbles", Optional.of("no-such-machine"), Optional.empty()));
        assertTrue(failure.getMessage().contains("no machine 'no-such-machine'"), failure.getMessage());
        assertEquals(0, open.search().find(Query.of("wibbles")).total());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<text>&amp;]]></text>", "../../etc/passwd", "CON", "\"';--", "4711", "ß ﬁ 漢字 \uD83D\uDD27",
        "aux.xmi\nnul", "${jndi:x}", "a\tb\n\n\nc"})
    void hostileTextIsKeptLetterByLetter(String text) throws Exception {
        var row = write(text);
        assertEquals(text, read(row).getText());
        assertTrue(row.path().matches("notes/2026/note-2026-[a-z0-9-]+\\.xmi"), row.path());
        assertEquals(List.of(), open.library().problems());
    }

    @ParameterizedTest
    @ValueSource(strings = {"one\r\ntwo", "one\u0000\ntwo\uFFFF", "one\rtwo\uD800"})
    void whatNoFileCanHoldIsLeftOut(String text) throws Exception {
        assertEquals("one\ntwo", read(write(text)).getText());
    }

    @Test
    void veryLongTextIsKept() throws Exception {
        var text = "wibble ".repeat(20_000).strip();
        assertEquals(text, read(write(text)).getText());
    }

    @Test
    void anotherHolderOfTheLibraryIsNamed() throws Exception {
        try (var second = workshop.open(open.library().root(), Use.WORK, new NullProgressMonitor())) {
            var failure = assertThrows(LibraryException.class,
                    () -> new NewNote(second, NOON, new Random(3)).write("wibbles", Optional.empty(), Optional.empty()));
            assertTrue(failure.getMessage().contains("another Benchlore is writing this library"), failure.getMessage());
        }
    }

    @Test
    void noteInAnInventedLibraryIsInventedToo() throws Exception {
        openDemonstration();
        assertTrue(write("wibbles").invented());
        assertEquals(List.of(), open.library().problems());
    }
}
