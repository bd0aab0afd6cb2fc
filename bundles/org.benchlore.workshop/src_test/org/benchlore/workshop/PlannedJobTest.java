// SPDX-License-Identifier: EPL-2.0
package org.benchlore.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Person;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanRequest;
import org.benchlore.store.LibraryException;
import org.benchlore.store.LoadedFile;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlannedJobTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 7);

    @TempDir
    Path home;

    private OpenLibrary open;
    private PlannedJob jobs;

    @BeforeEach
    void make() throws Exception {
        var workshop = KnownHome.in(home);
        open = workshop.open(workshop.demonstration(), Use.WORK, new NullProgressMonitor());
        jobs = new PlannedJob(open);
    }

    @AfterEach
    void close() {
        open.close();
    }

    private Plan plan(String subject) throws Exception {
        return open.planner().plan(new PlanRequest(subject, List.of("renew-pto-clutch-pack", "renew-pto-actuator"),
                List.of(), List.of(), DAY, Optional.empty()));
    }

    private static JobRecord job(LoadedFile file) {
        return (JobRecord) file.root().orElseThrow();
    }

    @Test
    void aStartedJobIsOpenOnItsUnitAndIsFoundInTheCatalogue() throws Exception {
        var file = jobs.start(plan("lorry-17"), Optional.empty());
        assertEquals(JobState.OPEN, job(file).getState());
        assertEquals(DAY, job(file).getOpened());
        var round = job(file).getRounds().get(0);
        assertEquals(List.of("renew-pto-actuator", "renew-pto-clutch-pack"), round.getPlanned().stream()
                .map(it -> open.library().addressOf(it).orElseThrow().id()).toList(), "its card is planned from these");
        assertTrue(round.getDone().isEmpty() && round.getText() == null, "nothing is done and nobody has signed");
        assertTrue(open.library().catalogue().byId(job(file).getId()).isPresent());
    }

    @Test
    void theSeniorsNameStandsWithWhatWasLookedThrough() throws Exception {
        var file = jobs.start(plan("lorry-17"), Optional.of("Oda Brekkan"));
        var text = job(file).getRounds().get(0).getText();
        assertTrue(text.startsWith("Looked through before work by Oda Brekkan: "), text);
        assertTrue(text.contains("clutch pack"), text);
        assertEquals(List.of(), List.copyOf(open.library().problems()));
    }

    @Test
    void aJobThatNobodyTouchedIsTakenBack() throws Exception {
        var file = jobs.start(plan("lorry-17"), Optional.empty());
        jobs.takeBack(file);
        assertFalse(Files.exists(open.library().root().resolve(file.path())));
        assertTrue(open.library().catalogue().byId(job(file).getId()).isEmpty());
    }

    @Test
    void aJobThatSomebodyChangedStays() throws Exception {
        var file = jobs.start(plan("lorry-17"), Optional.empty());
        var path = open.library().root().resolve(file.path());
        Files.writeString(path, Files.readString(path).replace("Left by the plan", "Left on purpose"));
        var refused = assertThrows(LibraryException.class, () -> jobs.takeBack(file));
        assertTrue(refused.getMessage().startsWith("The job stays"), refused.getMessage());
        assertTrue(Files.exists(path));
    }

    @Test
    void aJobIsNotStartedOnATypeOfMachine() throws Exception {
        var plan = plan("dravholm-hl26");
        var refused = assertThrows(LibraryException.class, () -> jobs.start(plan, Optional.empty()));
        assertTrue(refused.getMessage().contains("plan for a unit"), refused.getMessage());
    }

    @Test
    void onlySeniorsWhoAreStillThereMaySign() {
        assertEquals(List.of("Oda Brekkan", "Jory Pask"), jobs.seniors().stream().map(Person::getTitle).toList());
    }
}
