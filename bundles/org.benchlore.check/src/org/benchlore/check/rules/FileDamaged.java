// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.FileProblem;

/** Every file can be read whole. */
final class FileDamaged extends LibraryRule {

    FileDamaged() {
        super(new About("file-damaged", Severity.ERROR,
                "Every file can be read whole",
                "What cannot be read is not shown, and nobody misses it."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        entry.problems().stream().filter(problem -> problem.severity() != FileProblem.Severity.MISFIT)
                .forEach(problem -> findings.add(FilePlace.of(entry), problem.line() > 0
                        ? "Line " + problem.line() + ": " + problem.reason() : Works.capital(problem.reason())));
    }
}
