// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.store.Changes;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckerTest {

    @TempDir
    Path folder;

    private DemoCopy demo;
    private Library library;
    private Checker checker;

    @BeforeEach
    void open() {
        demo = new DemoCopy(folder);
        library = demo.open();
        checker = new Checker(library, () -> Mirror.DAY);
        checker.all(new NullProgressMonitor());
    }

    @AfterEach
    void close() {
        library.close();
    }

    private Changes refresh() throws Exception {
        return library.refresh(new NullProgressMonitor());
    }

    private static List<String> rules(Report report) {
        return report.open().stream().map(Problem::rule).toList();
    }

    @Test
    void aChangeIsFoundWithoutCheckingEverything() throws Exception {
        demo.outside(DemoCopy.PROCEDURE, "torque=\"22 N·m\"", "torque=\"220 N·m\"");
        var report = checker.changed(refresh());
        // Where the sum of the reviewed text was kept, the change itself is found too.
        assertEquals(List.of("torque-implausible", "torque-tool-missing"),
                rules(report).stream().filter(rule -> !rule.equals("changed-since-review")).toList());
        assertEquals(Set.of(), checker.pending());
    }

    @Test
    void whoRefersToAChangedFileIsLookedAtAgain() throws Exception {
        demo.outside("parts/pto-actuator.xmi", "  <applicability>",
                "  <supersededBy\n      href=\"pto-control-unit.xmi#pto-control-unit\"/>\n  <applicability>");
        assertEquals(List.of("superseded-reference"), rules(checker.changed(refresh())));
    }

    @Test
    void whatIsGoneIsMissed() throws Exception {
        Files.delete(demo.root().resolve("tools/bleed-bottle.xmi"));
        var report = checker.changed(refresh());
        assertTrue(rules(report).contains("broken-reference"), report.open().toString());
        assertTrue(report.open().stream().anyMatch(problem -> problem.at().id().equals("tooluse-3zdp")));
    }

    @Test
    void aFileThatManyReferToLeavesTheRestPendingUntilThereIsTime() throws Exception {
        demo.outside("machines/dravholm-hl26.xmi", "Noise guard off", "Guard off");
        checker.changed(refresh());
        assertFalse(checker.pending().isEmpty());
        checker.catchUp(new NullProgressMonitor());
        assertEquals(Set.of(), checker.pending());
    }

    @Test
    void theWorkingCopyIsCheckedBeforeItIsSaved() throws Exception {
        var session = new Sessions(library, new Random(1)).open(DemoCopy.PROCEDURE);
        var procedure = (Procedure) session.element();
        session.execute(session.edits().value(procedure, Literals.PROCEDURE__REVIEWED_ON, null));
        assertEquals(List.of("review-incomplete"), rules(checker.of(session)));
        assertEquals(List.of(), rules(checker.of(DemoCopy.PROCEDURE)));
    }

    @Test
    void incrementalAndFullCheckAgree() throws Exception {
        demo.outside(DemoCopy.PROCEDURE, "torque=\"22 N·m\"", "torque=\"220 N·m\"");
        demo.outside("procedures/leak-check-pto.xmi", "status=\"REVIEWED\"", "status=\"WITHDRAWN\"");
        checker.changed(refresh());
        var report = checker.catchUp(new NullProgressMonitor());
        assertEquals(new Checker(library, () -> Mirror.DAY).all(new NullProgressMonitor()).open().toString()
                .replaceAll("maker=[^\\]]*", ""),
                report.open().toString().replaceAll("maker=[^\\]]*", ""));
    }

    @Test
    void aSilencedProblemIsCountedAndNotOpen() throws Exception {
        demo.outside(DemoCopy.PROCEDURE, "statedBy=\"SHOP\"", "statedBy=\"CALCULATED\"");
        var problem = checker.changed(refresh()).open().get(0);
        var shop = new Sessions(library, new Random(1)).open("shop.xmi");
        shop.execute(Suppressions.silence(shop, problem, "A trial only.",
                Optional.of(new Address("shop.xmi", "oda-brekkan")), Mirror.DAY));
        shop.save();
        checker.changed(new Changes(Set.of("shop.xmi"), Set.of(), Set.of()));
        var report = checker.report();
        assertTrue(report.open().stream().noneMatch(one -> one.at().equals(problem.at())), report.open().toString());
        assertTrue(report.silenced().stream().anyMatch(one -> one.problem().at().equals(problem.at())
                && one.reason().equals("A trial only.")));
    }

    @Test
    void silencingNeedsAReason() throws Exception {
        var shop = new Sessions(library, new Random(1)).open("shop.xmi");
        var problem = checker.report().silenced().get(0).problem();
        var refusal = assertThrows(IllegalArgumentException.class,
                () -> Suppressions.silence(shop, problem, " ", Optional.empty(), Mirror.DAY));
        assertEquals("A rule is silenced for a reason: write why this may stay as it is", refusal.getMessage());
    }
}
