// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.FileProblem;

/** A file fits its library: ids once, references to the right kind, in its folder. */
final class FileMisfit extends LibraryRule {

    FileMisfit() {
        super(new About("file-misfit", Severity.ERROR,
                "A file fits its library: ids once, references to the right kind, in its folder",
                "Two elements with one id, or a file in the wrong folder, are found by chance."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        entry.problems().stream().filter(problem -> problem.severity() == FileProblem.Severity.MISFIT)
                .forEach(problem -> findings.add(FilePlace.of(entry), Works.capital(problem.reason())));
        entry.row().ifPresent(row -> FilePlace.wrongFolder(row)
                .ifPresent(reason -> findings.add(row.address(), Works.capital(reason))));
    }
}
