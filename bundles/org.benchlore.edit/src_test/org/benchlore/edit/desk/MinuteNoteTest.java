// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.Sessions;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.edit.media.MediaShelf;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.NoteStatus;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A note from the first letter to the saved file and back. */
class MinuteNoteTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><rect width='%d' height='9'/></svg>";

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;
    private MinuteNote minute;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
        minute = MinuteNote.begin(sessions, TODAY);
    }

    private FieldNote read(String path) {
        return (FieldNote) sessions.library().file(path).orElseThrow().root().orElseThrow();
    }

    private List<String> stand(String address, String typed) {
        return new Standpoint(sessions.library()).of(Optional.of(Address.parse(address)), typed).stream()
                .map(one -> one.what() + " " + one.target().map(Address::id).orElse(one.text())).toList();
    }

    @Test
    void onlyTheTextIsRequired() throws LibraryException {
        minute.write("Weeps at the plug\nafter a night outside");
        var file = MinuteNote.save(sessions, minute.named());
        var note = read(file.path());
        assertTrue(file.path().startsWith("notes/2026/note-2026-weeps-at-the-plug-after-a-night-"), file.path());
        assertEquals(List.of("Weeps at the plug\nafter a night outside", NoteStatus.UNSORTED, TODAY, true),
                List.of(note.getText(), note.getStatus(), note.getDate(), note.isInvented()));
        assertEquals(List.of(), sessions.library().problems());
    }

    @Test
    void withoutTextNothingIsSaved() {
        minute.write("  \n ");
        assertEquals("The note was not saved: write what was learned",
                assertThrows(LibraryException.class, minute::named).getMessage());
    }

    @Test
    void aJobGivesUnitMachineJobAndCodes() {
        assertEquals(List.of("MACHINE dravholm-hl26", "UNIT lorry-14",
                "JOB job-2026-clutch-pack-and-actuator-lorry-14-h6r2", "CODE code-4c09"),
                stand("jobs/2026/job-2026-clutch-pack-and-actuator-lorry-14-h6r2.xmi"
                        + "#job-2026-clutch-pack-and-actuator-lorry-14-h6r2", ""));
    }

    @Test
    void aComponentOfAMachineComesWithItsMachine() {
        assertEquals(List.of("MACHINE dravholm-hl26", "COMPONENT pto-position-sensor"),
                stand("machines/dravholm-hl26.xmi#pto-position-sensor", ""));
    }

    @Test
    void aKnownCodeInTheSearchFieldGoesInAsTheElement() {
        assertTrue(stand("units/lorry-17.xmi#lorry-17", "P0841-64").contains("CODE p0841-64"));
    }

    @Test
    void anUnknownCodeInTheSearchFieldGoesInAsItIsWritten() {
        assertTrue(stand("units/lorry-17.xmi#lorry-17", "p0999").contains("CODE_AS_WRITTEN P0999"));
    }

    @Test
    void wordsInTheSearchFieldAreNoCode() {
        assertEquals(List.of("MACHINE dravholm-hl26", "UNIT lorry-17"),
                stand("units/lorry-17.xmi#lorry-17", "learning fails after p0999"));
    }

    @Test
    void whatIsPutInByItselfIsTakenOutByTheSameKey() {
        var code = new Proposal(What.CODE_AS_WRITTEN, "P0999", Optional.empty());
        var unit = new NoteFields(sessions.library()).of(What.UNIT, Address.parse("units/lorry-17.xmi#lorry-17"));
        minute.fill(List.of(unit, code));
        assertEquals(List.of(What.MACHINE, What.UNIT, What.CODE_AS_WRITTEN),
                minute.fields().stream().map(Proposal::what).toList());
        List.copyOf(minute.fields()).forEach(minute::toggle);
        assertEquals(List.of(), minute.fields());
    }

    @Test
    void everySortOfValueIsPutInAndTakenOut() {
        var fields = new NoteFields(sessions.library());
        var all = List.of(fields.of(What.PROCEDURE, Address.parse("procedures/renew-pto-actuator.xmi#renew-pto-actuator")),
                fields.of(What.CODE, Address.parse("codes/code-4c09.xmi#code-4c09")),
                fields.of(What.COMPONENT, Address.parse("machines/dravholm-hl26.xmi#pto-position-sensor")),
                new Proposal(What.SYMPTOM, "Smells burnt", Optional.empty()));
        minute.fill(all);
        assertEquals(all, minute.fields());
        all.forEach(minute::toggle);
        assertEquals(List.of(), minute.fields());
    }

    @Test
    void aPictureIsKeptWithItsCaption() throws Exception {
        var shelf = new MediaShelf(demo.root());
        minute.write("Chafed here");
        var media = minute.add(shelf.add(SVG.formatted(4).getBytes(StandardCharsets.UTF_8)));
        minute.caption(media, "under the clip");
        minute.replace(media, shelf.add(SVG.formatted(5).getBytes(StandardCharsets.UTF_8)));
        var kept = read(MinuteNote.save(sessions, minute.named()).path()).getMedia().get(0);
        assertEquals("under the clip", kept.getCaption());
        assertTrue(Files.readString(demo.root().resolve("media").resolve(kept.getFile())).contains("\"5\""));
    }

    @Test
    void aSavedNoteIsTakenBackWithEverythingInIt() throws LibraryException {
        minute.write("Weeps at the plug");
        minute.fill(new Standpoint(sessions.library()).of(Optional.of(Address.parse("units/lorry-17.xmi#lorry-17")), ""));
        var file = MinuteNote.save(sessions, minute.named());
        minute.drop();
        var again = MinuteNote.takeBack(sessions, file);
        assertFalse(Files.exists(demo.root().resolve(file.path())));
        assertEquals("Weeps at the plug", again.note().getText());
        assertEquals(2, again.fields().size());
        assertEquals(List.of(again.session()), MinuteNote.unfinished(sessions));
        assertEquals(file.path(), MinuteNote.save(sessions, again.named()).path().replaceAll("....\\.xmi",
                file.path().substring(file.path().length() - 8)));
    }

    @Test
    void aNoteThatWasChangedSinceStays() throws Exception {
        minute.write("Weeps at the plug");
        var file = MinuteNote.save(sessions, minute.named());
        var path = demo.root().resolve(file.path());
        Files.writeString(path, Files.readString(path).replace("Weeps", "Drips"));
        var problem = assertThrows(LibraryException.class, () -> MinuteNote.takeBack(sessions, file));
        assertEquals("The note stays, since it was changed or is being edited: edit it instead", problem.getMessage());
        assertTrue(Files.exists(path));
    }
}
