// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Random;

import org.benchlore.check.rules.Mirrors;
import org.benchlore.edit.Sessions;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every fix mends what it says and can be undone. */
class FixesTest {

    @TempDir
    Path folder;

    /** Says what is wrong with the fix of a problem, or nothing. */
    private static String tried(Problem problem, Library library, Checker checker) throws Exception {
        var session = new Sessions(library, new Random(3)).open(problem.at().path());
        var before = session.bytes();
        session.execute(problem.fix().orElseThrow().edit(session));
        boolean isLeft = checker.of(session).open().stream()
                .anyMatch(one -> one.rule().equals(problem.rule()) && one.at().equals(problem.at()));
        session.undo();
        return (isLeft ? problem.rule() + " is not mended " : "")
                + (Arrays.equals(before, session.bytes()) ? "" : problem.rule() + " is not undone");
    }

    @Test
    void everyFixMendsItsProblemAndCanBeUndone() throws Exception {
        var wrong = new ArrayList<String>();
        int tried = 0;
        for (var mirror : Mirrors.all()) {
            var spoil = Spoil.file(mirror.path());
            mirror.defect().accept(spoil);
            if (!spoil.isAlone()) {
                continue;
            }
            var found = Mirror.found(mirror.rule(), spoil);
            if (found.isEmpty() || found.get(0).fix().isEmpty()) {
                continue;
            }
            var demo = new DemoCopy(folder.resolve(mirror.rule()));
            spoil.write(demo.root());
            try (var library = demo.open()) {
                wrong.add(tried(found.get(0), library, new Checker(library, () -> Mirror.DAY)));
                tried++;
            }
        }
        wrong.removeIf(String::isBlank);
        assertEquals(new ArrayList<String>(), wrong);
        assertTrue(tried >= 12, tried + " fixes were tried");
    }

    @Test
    void aFixOfAnotherFileIsRefused() throws Exception {
        var demo = new DemoCopy(folder);
        demo.outside(DemoCopy.PROCEDURE, "partsRecorded=\"LISTED\"", "partsRecorded=\"NONE\"");
        try (var library = demo.open()) {
            var fix = new Checker(library, () -> Mirror.DAY).all(new NullProgressMonitor()).open().get(0).fix().orElseThrow();
            var other = new Sessions(library, new Random(3)).open("procedures/read-codes.xmi");
            assertThrows(IllegalArgumentException.class, () -> fix.edit(other));
        }
    }
}
