// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.stream.Stream;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Row;

/** Every id is used once in the library. */
final class DuplicateId extends LibraryRule {

    DuplicateId() {
        super(new About("duplicate-id", Severity.ERROR,
                "Every id is used once in the library",
                "A reference leads to one of the two, perhaps the wrong one.",
                "The first file by path keeps the id; the problem stands at the others."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        entry.row().ifPresent(row -> facts.catalogue().byId(row.id()).filter(first -> !first.path().equals(row.path()))
                .ifPresent(first -> findings.add(row.address(), "The id '" + row.id() + "' is used by " + first.path()
                        + " too: change one")));
    }

    @Override
    public Stream<String> touched(Entry entry, LibraryFacts facts) {
        return entry.row().stream().flatMap(row -> facts.catalogue().withId(row.id())).map(Row::path);
    }
}
