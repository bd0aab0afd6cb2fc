// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;

/** Things to search for that are in the library: a code, a symptom, a word of a title. */
final class Examples {

    private static final int LONGEST = 48;
    private static final int LONG_WORD = 5;

    private Examples() {
    }

    static List<String> of(Catalogue catalogue) {
        var found = new ArrayList<String>();
        code(catalogue).ifPresent(found::add);
        first(catalogue, Kind.NOTE, row -> row.symptoms().stream()).ifPresent(found::add);
        first(catalogue, Kind.PROCEDURE, Examples::longestWord).ifPresent(found::add);
        return found.stream().distinct().toList();
    }

    /** A code that a note speaks of leads further than one that stands alone. */
    private static Optional<String> code(Catalogue catalogue) {
        return first(catalogue, Kind.NOTE, row -> row.codes().stream())
                .or(() -> first(catalogue, Kind.CODE, row -> row.codes().stream()));
    }

    private static Optional<String> first(Catalogue catalogue, Kind kind, Function<Row, Stream<String>> texts) {
        return catalogue.rows(kind).flatMap(texts).filter(text -> !text.isBlank() && text.length() <= LONGEST)
                .findFirst();
    }

    private static Stream<String> longestWord(Row row) {
        return Stream.of(row.title().split("[^\\p{L}]+")).filter(word -> word.length() >= LONG_WORD)
                .max(Comparator.comparingInt(String::length)).stream();
    }
}
