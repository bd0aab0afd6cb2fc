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
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.References;
import org.benchlore.evidence.CountWords;
import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Question;
import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Component;
import org.benchlore.model.JobState;
import org.benchlore.model.Person;
import org.benchlore.model.Unit;
import org.benchlore.search.Query;
import org.benchlore.store.LibraryException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopTest {

    @TempDir
    Path home;

    private Workshop workshop;

    @BeforeEach
    void make() {
        workshop = new Workshop(Places.below(home));
    }

    @Test
    void aNewLibraryOpensWithoutAProblem() throws Exception {
        var folder = home.resolve("ours");
        workshop.create(folder, "Our shop");
        try (var open = open(folder)) {
            assertEquals("Our shop", open.title());
            assertEquals(List.of(), open.library().problems());
            assertFalse(open.isInvented());
            assertTrue(open.isWritable());
        }
    }

    @Test
    void aFolderInUseIsNotMadeALibrary() throws Exception {
        Files.writeString(home.resolve("letter.txt"), "keep me");
        var failure = assertThrows(LibraryException.class, () -> workshop.create(home, "Shop"));
        assertTrue(failure.getMessage().contains("is in use"), failure.getMessage());
        assertEquals("keep me", Files.readString(home.resolve("letter.txt")));
    }

    @Test
    void aSavedNoteIsFoundAtOnce() throws Exception {
        var folder = home.resolve("ours");
        workshop.create(folder, "Our shop");
        try (var open = open(folder)) {
            var note = BookFactory.eINSTANCE.createFieldNote();
            note.setId("note-2026-squeal-aaaa");
            note.setFormatVersion(1);
            note.setText("belt squeals when wet");
            open.library().save(note, Optional.empty());
            assertEquals(1, open.search().find(Query.of("squeal")).total());
        }
    }

    @Test
    void aNewShopCountsAsUsualAndItsFileSaysHow() throws Exception {
        var folder = home.resolve("ours");
        workshop.create(folder, "Our shop");
        try (var open = open(folder)) {
            assertEquals(CountingRules.usual(), open.countingRules());
            assertTrue(Files.readString(folder.resolve("shop.xmi")).contains("renewTroublePercent=\"0.5\""));
        }
    }

    /**
     * The demonstration: the note's 3 of about 40, which two older jobs are among; lorry 8's of 2025 held and lorry 25's of
     * 2026 came apart again, so 4 of about 42. A third job since then, long enough ago to have come back, makes three.
     */
    @Test
    void theEvidenceOfTheDemonstrationFollowsAChange() throws Exception {
        try (var open = open(workshop.demonstration())) {
            var machine = "machines/dravholm-hl26.xmi";
            var question = Question.of(new Address(machine, "pto-actuator"), LocalDate.of(2026, 11, 25));
            var findings = open.evidence().about(question, open.countingRules());
            assertEquals("about 1 in 11 of ours (4 of about 42)", CountWords.of(findings));
            assertEquals(2, findings.left().inTally());
            var job = BookFactory.eINSTANCE.createJobRecord();
            job.setId("job-2026-left-in-aaaa");
            job.setFormatVersion(1);
            job.setState(JobState.CLOSED);
            job.setOpened(LocalDate.of(2026, 1, 7));
            job.setUnit((Unit) References.to(Literals.UNIT, new Address("units/lorry-21.xmi", "lorry-21")));
            var left = BookFactory.eINSTANCE.createLeftInPlace();
            left.setComponent((Component) References.to(Literals.COMPONENT, question.component()));
            left.setConfirmedBy((Person) References.to(Literals.PERSON, new Address("shop.xmi", "jory-pask")));
            job.getLeft().add(left);
            open.library().save(job, Optional.empty());
            assertEquals(3, open.evidence().about(question, open.countingRules()).left().of());
        }
    }

    @Test
    void theDemonstrationIsAWritableCopyOfTheUsersOwn() throws Exception {
        var folder = workshop.demonstration();
        assertTrue(folder.startsWith(home));
        try (var open = open(folder)) {
            assertTrue(open.isInvented());
            assertTrue(open.isWritable());
            assertEquals(List.of(), open.library().problems());
        }
    }

    @Test
    void aCopyInWhichSomebodyWroteIsLeftAlone() throws Exception {
        var folder = workshop.demonstration();
        var note = folder.resolve("notes/2026/note-2026-mine-aaaa.xmi");
        Files.writeString(note, "<book:FieldNote xmlns:book=\"urn:benchlore:book:1\" id=\"note-2026-mine-aaaa\""
                + " formatVersion=\"1\"><text>mine</text></book:FieldNote>");
        pretendAnotherVersion(folder);
        workshop.demonstration();
        assertTrue(Files.exists(note));
    }

    @Test
    void aCopyInWhichNobodyWroteIsRenewed() throws Exception {
        var folder = workshop.demonstration();
        var origin = Files.readAllLines(folder.resolve(".benchlore/origin"));
        pretendAnotherVersion(folder);
        workshop.demonstration();
        assertEquals(origin, Files.readAllLines(folder.resolve(".benchlore/origin")));
    }

    private static void pretendAnotherVersion(Path folder) throws Exception {
        var origin = folder.resolve(".benchlore/origin");
        Files.write(origin, List.of("another version", Files.readAllLines(origin).get(1)));
    }

    @Test
    void librariesThatWereWorkedInAreRecentLatestFirst() throws Exception {
        var first = home.resolve("first");
        var second = home.resolve("second");
        workshop.create(first, "First");
        workshop.create(second, "Second");
        open(first).close();
        open(second).close();
        open(first).close();
        assertEquals(List.of(first.toRealPath(), second.toRealPath()), workshop.recent());
        workshop.open(second, Use.LOOK_UP, new NullProgressMonitor()).close();
        assertEquals(first.toRealPath(), workshop.recent().get(0));
    }

    @Test
    void nothingIsWrittenIntoALibraryThatIsOnlyLookedUp() throws Exception {
        var folder = home.resolve("ours");
        workshop.create(folder, "Our shop");
        workshop.open(folder, Use.LOOK_UP, new NullProgressMonitor()).close();
        try (var files = Files.list(folder)) {
            assertEquals(List.of(".gitattributes", ".gitignore", "glossary.xmi", "shop.xmi"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void eachSystemKeepsThingsWhereItsUsersExpectThem() {
        var user = Path.of("/home/pat");
        assertEquals(Path.of("/home/pat/.cache/benchlore"), Places.ofSystem("Linux", user, Map.of()).cache());
        assertEquals(Path.of("/x/benchlore"), Places.ofSystem("Linux", user, Map.of("XDG_CACHE_HOME", "/x")).cache());
        assertEquals(Path.of("/home/pat/.cache/benchlore"),
                Places.ofSystem("Linux", user, Map.of("XDG_CACHE_HOME", "relative")).cache());
        assertEquals(Path.of("/home/pat/Library/Caches/Benchlore"), Places.ofSystem("Mac OS X", user, Map.of()).cache());
        assertTrue(Places.ofSystem("Windows 11", user, Map.of()).state().startsWith("/home/pat/AppData/Local"));
    }

    private OpenLibrary open(Path folder) throws LibraryException {
        return workshop.open(folder, Use.WORK, new NullProgressMonitor());
    }
}
