// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.draft;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

import org.benchlore.edit.Conflict;
import org.benchlore.edit.DemoCopy;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.SaveResult;
import org.benchlore.edit.Sessions;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Kind;
import org.benchlore.store.LibraryException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written and not saved comes back after the program ended; what was saved or closed does not. */
class DraftsTest {

    private static final String UNIT = "units/lorry-14.xmi";
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Sessions sessions;
    private Drafts drafts;
    private Autosave autosave;
    private EditSession session;

    @BeforeEach
    void open() throws LibraryException {
        demo = new DemoCopy(folder);
        sessions = demo.sessions();
        drafts = new Drafts(folder.resolve("drafts"));
        autosave = new Autosave(drafts, sessions, Clock.fixed(NOON, ZoneOffset.UTC), Duration.ZERO);
        session = sessions.open(UNIT);
    }

    @AfterEach
    void end() {
        drafts.close();
    }

    private void title(String title) {
        session.execute(session.edits().text(session.element(), Literals.TOP_ELEMENT__TITLE, title));
    }

    /** What the next start of the program finds after this one ended without a word. */
    private Drafts next() {
        autosave.close();
        drafts.close();
        drafts = new Drafts(folder.resolve("drafts"));
        return drafts;
    }

    private List<Draft> found() {
        return next().list(demo.open());
    }

    @Test
    void nothingIsWrittenWhileNothingIsChanged() {
        assertEquals(0, autosave.tick());
        assertEquals(List.of(), found());
    }

    @Test
    void aDraftIsListedWithTitleTimeAndBase() {
        title("Lorry 14, draft");
        assertEquals(1, autosave.tick());
        var draft = found().get(0);
        assertEquals(List.of(UNIT, "Lorry 14, draft", NOON, Draft.Base.SAME),
                List.of(draft.path(), draft.title(), draft.when(), draft.base()));
    }

    @Test
    void theSameStateIsWrittenOnce() {
        title("Lorry 14, draft");
        autosave.tick();
        assertEquals(0, autosave.tick());
    }

    @Test
    void aDraftIsWrittenAtMostSoOften() {
        autosave.close();
        autosave = new Autosave(drafts, sessions, Clock.fixed(NOON, ZoneOffset.UTC), Duration.ofSeconds(2));
        title("one");
        assertEquals(1, autosave.tick());
        title("two");
        assertEquals(0, autosave.tick());
    }

    @Test
    void aRestoredSessionIsDirtyAndSavesWhatWasWritten() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        var fresh = demo.sessions();
        var restored = next().restore(drafts.list(fresh.library()).get(0), fresh);
        assertTrue(restored.isDirty());
        assertEquals("Lorry 14, draft", restored.element().getTitle());
        assertInstanceOf(SaveResult.Saved.class, restored.save());
        assertTrue(demo.text(UNIT).contains("Lorry 14, draft"));
    }

    @Test
    void aRestoredSessionIsKeptAgainstTheNextCrash() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        var fresh = demo.sessions();
        next().restore(drafts.list(fresh.library()).get(0), fresh);
        assertEquals(List.of("Lorry 14, draft"), found().stream().map(Draft::title).toList());
    }

    @Test
    void aDraftWhoseFileWasChangedSinceIsRestoredAsAQuestion() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        demo.outside(UNIT, "Lorry 14, harbour authority", "Lorry 14, theirs");
        var fresh = demo.sessions();
        var draft = next().list(fresh.library()).get(0);
        assertEquals(Draft.Base.CHANGED, draft.base());
        var restored = drafts.restore(draft, fresh);
        var conflict = assertInstanceOf(Conflict.Changed.class, restored.conflict().orElseThrow());
        assertEquals(List.of("Lorry 14, harbour authority", "Lorry 14, draft", "Lorry 14, theirs"),
                conflict.questions().stream().flatMap(one -> List.of(one.base(), one.mine(), one.theirs()).stream()).toList());
    }

    @Test
    void aNewElementComesBackToo() throws LibraryException {
        var note = sessions.create(Kind.NOTE, "", 2026);
        note.execute(note.edits().text(note.element(), Literals.FIELD_NOTE__TEXT, "Pin was bent"));
        autosave.tick();
        var fresh = demo.sessions();
        var draft = next().list(fresh.library()).get(0);
        assertEquals(Draft.Base.NEW, draft.base());
        assertInstanceOf(SaveResult.Saved.class, drafts.restore(draft, fresh).save());
    }

    @Test
    void aDraftOfADeletedFileSaysSo() throws IOException {
        title("Lorry 14, draft");
        autosave.tick();
        Files.delete(demo.root().resolve(UNIT));
        assertEquals(Draft.Base.GONE, found().get(0).base());
    }

    @Test
    void savingRemovesTheDraft() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        session.save();
        assertEquals(List.of(), found());
    }

    @Test
    void closingRemovesTheDraft() {
        title("Lorry 14, draft");
        autosave.tick();
        session.close();
        assertEquals(List.of(), found());
    }

    @Test
    void undoingEverythingRemovesTheDraft() {
        title("Lorry 14, draft");
        autosave.tick();
        session.undo();
        autosave.tick();
        assertEquals(List.of(), found());
    }

    @Test
    void theDraftsOfARunningProgramAreNotOffered() {
        title("Lorry 14, draft");
        autosave.tick();
        try (var other = new Drafts(folder.resolve("drafts"))) {
            assertEquals(List.of(), other.list(demo.open()));
        }
    }

    @Test
    void twoProgramsAreNotOfferedTheSameDraft() {
        title("Lorry 14, draft");
        autosave.tick();
        assertEquals(1, found().size());
        try (var other = new Drafts(folder.resolve("drafts"))) {
            assertEquals(List.of(), other.list(demo.open()));
        }
    }

    @Test
    void aDiscardedDraftIsGone() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        next().discard(drafts.list(demo.open()).get(0));
        assertEquals(List.of(), found());
    }

    @Test
    void aDraftOfAFileThatIsBeingEditedIsRefused() throws LibraryException {
        title("Lorry 14, draft");
        autosave.tick();
        var draft = found().get(0);
        assertTrue(assertThrows(LibraryException.class, () -> drafts.restore(draft, sessions)).getMessage()
                .contains("is being edited already"));
    }

    @Test
    void noDamageMakesADraftReadWrong() {
        var draft = new DraftFile("units/x.xmi", "A title", NOON, Optional.of(new byte[] {1, 2}), new byte[] {3, 4, 5});
        assertArrayEquals(draft.mine(), DraftFile.read(draft.bytes()).orElseThrow().mine());
        var random = new Random(20261125);
        for (int i = 0; i < 2000; i++) {
            var bytes = draft.bytes();
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            assertEquals(Optional.empty(), DraftFile.read(bytes));
        }
        for (int length = 0; length < draft.bytes().length; length++) {
            assertEquals(Optional.empty(), DraftFile.read(java.util.Arrays.copyOf(draft.bytes(), length)));
        }
    }

    @Test
    void aTimerWritesDraftsAndASaveIsNotFollowedByALateOne() throws Exception {
        autosave.close();
        autosave = new Autosave(drafts, sessions, Clock.systemUTC(), Duration.ofMillis(5));
        var editing = Executors.newSingleThreadExecutor();
        var timer = Executors.newSingleThreadScheduledExecutor();
        try {
            autosave.start(timer, editing);
            for (int i = 0; i < 40; i++) {
                int number = i;
                editing.submit(() -> title("title " + number)).get();
                TimeUnit.MILLISECONDS.sleep(3);
            }
            editing.submit(() -> session.save()).get();
        } finally {
            timer.shutdown();
            editing.shutdown();
            assertTrue(timer.awaitTermination(5, TimeUnit.SECONDS) && editing.awaitTermination(5, TimeUnit.SECONDS));
        }
        assertTrue(demo.text(UNIT).contains("title 39"));
        assertEquals(List.of(), found());
    }

    /** The timer's one thread also edits here, so the draft's writing waits until the save is over. */
    @Test
    void aDraftThatWaitsToBeWrittenIsDroppedByASave() throws Exception {
        title("Lorry 14, saved");
        autosave.close();
        autosave = new Autosave(drafts, sessions, Clock.systemUTC(), Duration.ofMillis(1));
        var saved = new CountDownLatch(1);
        var timer = Executors.newSingleThreadScheduledExecutor();
        autosave.start(timer, task -> {
            task.run();
            save();
            saved.countDown();
        });
        assertTrue(saved.await(5, TimeUnit.SECONDS));
        timer.shutdown();
        assertTrue(timer.awaitTermination(5, TimeUnit.SECONDS));
        assertTrue(demo.text(UNIT).contains("Lorry 14, saved"));
        assertEquals(List.of(), found());
    }

    private void save() {
        try {
            session.save();
        } catch (LibraryException e) {
            throw new IllegalStateException(e);
        }
    }
}
