// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.diagnose.Path;
import org.benchlore.diagnose.Question;
import org.benchlore.edit.desk.MinuteNote;
import org.benchlore.edit.desk.NoteStart;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.model.Address;
import org.benchlore.model.FieldNote;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way of a diagnosis on its way into a note and into a job record, over the demonstration library. */
class DiagnosedTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String CLOSED = "job-2026-clutch-pack-and-actuator-lorry-14-h6r2";

    @TempDir
    java.nio.file.Path home;

    private OpenLibrary open;
    private DiagnosedJob jobs;

    @BeforeEach
    void make() throws Exception {
        var workshop = KnownHome.in(home);
        open = workshop.open(workshop.demonstration(), Use.WORK, new NullProgressMonitor());
        jobs = new DiagnosedJob(open);
    }

    @AfterEach
    void close() {
        open.close();
    }

    private Path path(String about, String after, String... answers) throws Exception {
        var replies = List.of(answers).stream().map(one -> new Question.Reply(one.split("=")[0], one.split("=")[1])).toList();
        return open.diagnoses().ask(new Question(about, List.of("Teach-in stops half way"), List.of("4C17", "X9Z9"),
                Optional.ofNullable(after), replies)).path();
    }

    private static List<String> ids(List<Proposal> all) {
        return all.stream().map(one -> one.what() + " " + one.target().map(Address::id).orElse(one.text())).toList();
    }

    private NoteStart start(Path path) {
        return new DiagnosedNote(open.library()).of(path);
    }

    private JobRecord job(Address address) {
        return (JobRecord) open.library().element(address).orElseThrow();
    }

    @Test
    void whatWasFoundFillsEveryFieldOfTheNote() throws Exception {
        var start = start(path("lorry-21", "renew-pto-clutch-pack", "step-dp7k=below"));
        assertEquals(List.of("MACHINE dravholm-hl26", "UNIT lorry-21", "PROCEDURE renew-pto-clutch-pack", "CODE code-4c17",
                "CODE_AS_WRITTEN X9Z9", "SYMPTOM Teach-in stops half way", "COMPONENT pto-actuator",
                "CAUSE cause-actuator-sticks"), ids(start.about()));
        assertEquals(List.of(), start.offered());
        assertTrue(start.text().endsWith("Points to: Actuator tilts and stops short"), start.text());
    }

    @Test
    void aNoteTakesAllOfIt() throws Exception {
        var minute = MinuteNote.begin(open.sessions(), DAY);
        var start = start(path("lorry-21", "renew-pto-clutch-pack", "step-dp7k=below"));
        minute.fill(start.about());
        minute.write(start.text());
        var saved = (FieldNote) MinuteNote.save(open.sessions(), minute.named()).root().orElseThrow();
        assertEquals("cause-actuator-sticks", open.library().addressOf(saved.getCause()).orElseThrow().id());
        assertEquals("pto-actuator", open.library().addressOf(saved.getComponent()).orElseThrow().id());
        assertEquals(List.of("X9Z9"), saved.getCodesAsWritten());
        assertEquals(start.about().size(), minute.fields().size());
    }

    @Test
    void whatOnlyStandsFirstIsOfferedAndNotFilledIn() throws Exception {
        var start = start(path("lorry-21", "renew-pto-clutch-pack"));
        assertFalse(ids(start.about()).contains("CAUSE cause-actuator-sticks"));
        assertEquals(List.of("COMPONENT pto-actuator", "CAUSE cause-actuator-sticks"), ids(start.offered()));
        assertEquals("", start.text());
    }

    @Test
    void aJobThatWasHandedBackIsNotTheJobOfTheNote() throws Exception {
        var path = path("lorry-17", "renew-pto-clutch-pack");
        assertTrue(path.job().isPresent());
        assertEquals(JobState.CLOSED, job(path.job().get()).getState());
        assertFalse(ids(start(path)).stream().anyMatch(one -> one.startsWith("JOB")));
    }

    private static List<String> ids(NoteStart start) {
        return ids(start.about());
    }

    @Test
    void aJobIsBegunWithTheWholeWayAndTakenBack() throws Exception {
        var path = path("lorry-21", "renew-pto-clutch-pack", "step-dp7k=below");
        var written = jobs.begin(path, DAY);
        var job = job(written.job());
        assertEquals("Teach-in stops half way", job.getComplaint());
        assertEquals(List.of(JobState.OPEN, DAY, true), List.of(job.getState(), job.getOpened(), job.isInvented()));
        assertTrue(job.getTitle().endsWith(": Teach-in stops half way"), job.getTitle());
        assertEquals(List.of("X9Z9"), job.getCodesAsWritten());
        assertEquals(1, job.getCodesOnArrival().size());
        assertEquals(path.added(), job.getRounds().get(0).getText());
        assertEquals(DAY, job.getRounds().get(0).getDate());
        assertEquals("cause-actuator-sticks", open.library().addressOf(job.getCause()).orElseThrow().id());
        assertEquals("pto-actuator", open.library().addressOf(job.getFailed().get(0)).orElseThrow().id());
        assertTrue(jobs.open(path.about()).stream().anyMatch(row -> row.id().equals(written.job().id())), "it is open now");
        assertEquals(List.of(), open.library().problems());
        written.back().orElseThrow().run();
        assertTrue(open.library().catalogue().byId(written.job().id()).isEmpty());
    }

    @Test
    void onlyWhatIsNewIsAddedToAJobAndNothingIsWrittenOver() throws Exception {
        var first = jobs.begin(path("lorry-21", null), DAY);
        assertNull(job(first.job()).getCause());
        assertTrue(job(first.job()).getRounds().isEmpty());
        var found = path("lorry-21", "renew-pto-clutch-pack", "step-dp7k=below");
        var second = jobs.add(found, first.job(), DAY);
        var job = job(first.job());
        assertEquals("Teach-in stops half way", job.getComplaint());
        assertEquals(1, job.getCodesOnArrival().size());
        assertEquals(1, job.getRounds().size());
        assertEquals("The job record holds all of it already.",
                assertThrows(LibraryException.class, () -> jobs.add(found, first.job(), DAY)).getMessage());
        var other = path("lorry-21", null, "bleed-pto-engagement-circuit=bubbles");
        jobs.add(other, first.job(), DAY);
        assertEquals("cause-actuator-sticks", open.library().addressOf(job(first.job()).getCause()).orElseThrow().id());
        assertThrows(LibraryException.class, () -> second.back().orElseThrow().run(), "it was changed since");
    }

    @Test
    void whatWasAddedIsTakenBackToTheLetter() throws Exception {
        var first = jobs.begin(path("lorry-21", null), DAY);
        var file = open.library().root().resolve(first.job().path());
        var before = Files.readString(file);
        var second = jobs.add(path("lorry-21", null, "step-dp7k=below"), first.job(), DAY);
        assertFalse(before.equals(Files.readString(file)));
        second.back().orElseThrow().run();
        assertEquals(before, Files.readString(file));
    }

    @Test
    void aRecordThatIsBeingEditedIsChangedThereToBeUndone() throws Exception {
        var first = jobs.begin(path("lorry-21", null), DAY);
        try (var session = open.sessions().open(first.job().path())) {
            var written = jobs.add(path("lorry-21", null, "step-dp7k=below"), first.job(), DAY);
            assertTrue(written.back().isEmpty());
            assertEquals(1, ((JobRecord) session.element()).getRounds().size());
            session.undo();
            assertTrue(((JobRecord) session.element()).getRounds().isEmpty());
        }
    }

    @Test
    void jobsThatWereHandedBackAreNotOffered() throws Exception {
        assertTrue(open.library().catalogue().byId(CLOSED).isPresent());
        assertEquals(List.of(), jobs.open(new Address("units/lorry-14.xmi", "lorry-14")));
    }

    @Test
    void aMachineHasNoJob() throws Exception {
        var path = path("dravholm-hl26", null);
        assertEquals("A job is done on one unit: choose a unit, not a machine.",
                assertThrows(LibraryException.class, () -> jobs.begin(path, DAY)).getMessage());
    }
}
