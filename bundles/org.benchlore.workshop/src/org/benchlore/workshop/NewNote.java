// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.random.RandomGenerator;

import org.benchlore.model.BookFactory;
import org.benchlore.model.ElementId;
import org.benchlore.model.FaultCode;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.model.NoteStatus;
import org.benchlore.search.CodeLookup;
import org.benchlore.store.BookFormat;
import org.benchlore.store.LibraryException;
import org.benchlore.store.Row;

/**
 * Writes a note down as quickly as possible: only what was learned is required. The note is unsorted and of today, and
 * it is found as soon as this returns.
 */
public final class NewNote {

    private static final int WORDS_IN_ID = 8;
    private static final int TRIES = 20;

    private final OpenLibrary open;
    private final Clock clock;
    private final RandomGenerator random;

    /**
     * Makes a writer of notes.
     *
     * @param open the library that takes them
     * @param clock says which day it is
     * @param random source of the ends of ids
     */
    public NewNote(OpenLibrary open, Clock clock, RandomGenerator random) {
        this.open = open;
        this.clock = clock;
        this.random = random;
    }

    /**
     * Writes a note.
     *
     * @param text what was learned; characters that no file can hold are left out
     * @param machineId the machine it was learned on
     * @param code a fault code that was there, in any form; a code that the library does not hold is kept as written
     * @return the row of the note
     * @throws LibraryException if there is no text, no such machine, or the library cannot be written
     */
    public Row write(String text, Optional<String> machineId, Optional<String> code) throws LibraryException {
        var clean = clean(text).strip();
        if (clean.isEmpty()) {
            throw new LibraryException("The note was not saved: write what was learned");
        }
        if (!open.isWritable()) {
            throw new LibraryException("The note was not saved: this library is read-only; ask whoever looks after it");
        }
        var note = note(clean);
        if (machineId.isPresent()) {
            note.setMachine(machine(machineId.get()));
        }
        code.map(written -> clean(written).strip()).filter(written -> !written.isEmpty())
                .ifPresent(written -> add(note, written));
        return saved(note);
    }

    private FieldNote note(String text) throws LibraryException {
        var today = LocalDate.now(clock);
        var note = BookFactory.eINSTANCE.createFieldNote();
        note.setId(freeId(text, today.getYear()));
        note.setFormatVersion(BookFormat.VERSION);
        note.setInvented(open.isInvented());
        note.setText(text);
        note.setDate(today);
        note.setStatus(NoteStatus.UNSORTED);
        return note;
    }

    private String freeId(String text, int year) throws LibraryException {
        var words = text.split("\\s+", WORDS_IN_ID + 1);
        var head = String.join(" ", java.util.Arrays.asList(words).subList(0, Math.min(words.length, WORDS_IN_ID)));
        for (int i = 0; i < TRIES; i++) {
            var id = ElementId.create(Kind.NOTE, head, year, random);
            if (open.library().catalogue().byId(id).isEmpty()) {
                return id;
            }
        }
        throw new LibraryException("The note was not saved: no free id was found for it; try again");
    }

    private Machine machine(String id) throws LibraryException {
        return open.library().top(id).filter(Machine.class::isInstance).map(Machine.class::cast)
                .orElseThrow(() -> new LibraryException("The note was not saved: this library has no machine '" + id
                        + "'; choose one of its machines or none"));
    }

    private void add(FieldNote note, String written) {
        var known = new CodeLookup(open.library().catalogue()).read(written).stream()
                .flatMap(reading -> reading.known().stream()).findFirst()
                .flatMap(row -> open.library().top(row.id())).filter(FaultCode.class::isInstance);
        known.ifPresentOrElse(code -> note.getCodes().add((FaultCode) code), () -> note.getCodesAsWritten().add(written));
    }

    private Row saved(FieldNote note) throws LibraryException {
        var path = open.library().save(note, Optional.empty()).path();
        return open.library().catalogue().entry(path).flatMap(entry -> entry.row())
                .orElseThrow(() -> new LibraryException(path + " was saved but cannot be read back: check the disk"));
    }

    /** XML 1.0, section 2.2, names the characters that a file can hold; line ends become plain line feeds. */
    private static String clean(String text) {
        var clean = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().filter(NewNote::isHeldByXml)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private static boolean isHeldByXml(int character) {
        return character == '\t' || character == '\n' || character >= 0x20 && character <= 0xd7ff
                || character >= 0xe000 && character <= 0xfffd || character >= 0x10000;
    }
}
