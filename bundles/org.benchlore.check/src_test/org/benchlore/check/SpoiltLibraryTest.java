// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Collectors;

import org.benchlore.check.rules.Mirrors;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copy of the demonstration library, spoilt with one defect after the other, each taken in as a change. */
class SpoiltLibraryTest {

    @TempDir
    Path folder;

    private DemoCopy demo;

    /** Spoils, looks at what changed, and puts everything back. */
    private List<Problem> found(Mirror mirror, Library library, Checker checker) throws Exception {
        var spoil = Spoil.file(mirror.path());
        mirror.defect().accept(spoil);
        var before = new HashMap<Path, byte[]>();
        var written = spoil.paths().stream().map(demo.root()::resolve).toList();
        for (var file : written) {
            before.put(file, Files.exists(file) ? Files.readAllBytes(file) : null);
        }
        spoil.write(demo.root());
        checker.changed(library.refresh(new NullProgressMonitor()));
        var report = checker.catchUp(new NullProgressMonitor());
        for (var file : written) {
            if (before.get(file) == null) {
                Files.delete(file);
            } else {
                Files.write(file, before.get(file));
            }
        }
        checker.changed(library.refresh(new NullProgressMonitor()));
        assertEquals(List.of(), checker.catchUp(new NullProgressMonitor()).open(), mirror.rule());
        return report.open().stream().filter(problem -> problem.rule().equals(mirror.rule())).toList();
    }

    @Test
    void eachDefectIsFoundOnceAtItsElementAndGoneWhenItIsMended() throws Exception {
        demo = new DemoCopy(folder);
        try (var library = demo.open()) {
            var checker = new Checker(library, () -> Mirror.DAY);
            checker.all(new NullProgressMonitor());
            var wrong = new ArrayList<String>();
            for (var mirror : Mirrors.all()) {
                var places = found(mirror, library, checker).stream().map(problem -> problem.at().toString()).toList();
                if (!places.equals(List.of(mirror.at()))) {
                    wrong.add(mirror.rule() + " found at " + places + ", not at " + mirror.at());
                }
            }
            assertEquals(List.of(), wrong);
        }
    }

    @Test
    void everyRuleHasItsMirror() {
        var rules = new Checker(Demo.LIBRARY, () -> Mirror.DAY).rules().all().stream().map(Rule::id).collect(Collectors.toSet());
        assertEquals(rules, Mirrors.all().stream().map(Mirror::rule).collect(Collectors.toSet()));
        assertTrue(rules.size() >= 35, rules.size() + " rules");
    }
}
