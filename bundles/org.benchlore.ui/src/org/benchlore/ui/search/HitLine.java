// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.search.Hit;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.look.Words;

/**
 * A hit in words.
 *
 * @param hit the hit
 * @param facts kind, status and year, as far as there are any
 * @param machines titles of its machines, may be empty
 */
record HitLine(Hit hit, String facts, String machines) {

    private static final String BETWEEN = " · ";

    static HitLine of(Hit hit, Catalogue catalogue) {
        return new HitLine(hit, facts(hit.row()), machines(hit.row(), catalogue));
    }

    private static String facts(Row row) {
        var year = row.date().map(date -> Integer.toString(date.getYear())).orElse("");
        return joined(Stream.of(Words.one(row.kind()), Words.state(row.status()), year));
    }

    static String machines(Row row, Catalogue catalogue) {
        return row.machines().stream().map(catalogue::at).flatMap(Optional::stream).map(Row::title).distinct()
                .collect(Collectors.joining(", "));
    }

    static String joined(Stream<String> words) {
        return words.filter(word -> !word.isEmpty()).collect(Collectors.joining(BETWEEN));
    }

    /** Returns the whole line as it is read out. */
    String spoken() {
        return hit.row().title() + ", " + joined(Stream.of(facts, machines)).replace(BETWEEN, ", ");
    }
}
