// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.List;

import org.benchlore.model.Glossary;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.terms.WordGroups;

/** The built-in words and a library's own, put together anew when its glossary has changed. */
final class LibraryGlossary {

    private final Library library;
    private volatile Known known;

    private record Known(List<Row> glossaries, WordGroups words) {
    }

    LibraryGlossary(Library library) {
        this.library = library;
    }

    WordGroups words() {
        var now = library.catalogue().rows(Kind.GLOSSARY).toList();
        var last = known;
        if (last == null || !last.glossaries().equals(now)) {
            last = new Known(now, WordGroups.withBuiltIn(entries(now)));
            known = last;
        }
        return last.words();
    }

    private List<List<String>> entries(List<Row> glossaries) {
        return glossaries.stream().flatMap(row -> library.top(row.id()).stream()).filter(Glossary.class::isInstance)
                .flatMap(top -> ((Glossary) top).getEntries().stream()).map(entry -> List.copyOf(entry.getWords()))
                .toList();
    }
}
