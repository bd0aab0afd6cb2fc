// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.stream.Stream;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.LibraryFacts;
import org.benchlore.check.LibraryRule;
import org.benchlore.check.Severity;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Row;

/** Invented data does not stand in a real shop's book. */
final class InventedAmongReal extends LibraryRule {

    InventedAmongReal() {
        super(new About("invented-among-real", Severity.ERROR,
                "Invented data does not stand in a real shop's book",
                "Somebody works on a real machine by an invented figure."));
    }

    @Override
    public void check(Entry entry, LibraryFacts facts, Findings findings) {
        boolean isReal = facts.catalogue().rows(Kind.SHOP).anyMatch(shop -> !shop.invented());
        entry.row().filter(row -> isReal && row.invented()).ifPresent(row -> findings.add(row.address(),
                "This is invented demonstration data in a real shop's book: remove it, or write what is true"));
    }

    @Override
    public Stream<String> touched(Entry entry, LibraryFacts facts) {
        return entry.row().filter(row -> row.kind() == Kind.SHOP && !row.invented()).stream()
                .flatMap(shop -> facts.catalogue().rows().filter(Row::invented).map(Row::path));
    }
}
