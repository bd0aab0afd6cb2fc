// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.benchlore.page.Block.Table;

/** Collects the rows of a table. Columns that stay empty are left out; no rows make no table. */
final class Rows {

    private final String caption;
    private final List<String> header;
    private final List<List<List<Span>>> rows = new ArrayList<>();

    Rows(String caption, String... header) {
        this.caption = caption;
        this.header = List.of(header);
    }

    @SafeVarargs
    @SuppressWarnings("varargs")
    final Rows row(List<Span>... cells) {
        if (cells.length != header.size()) {
            throw new IllegalArgumentException(caption + " has " + header.size() + " columns, not " + cells.length);
        }
        rows.add(List.of(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    Optional<Table> table() {
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        var kept = IntStream.range(0, header.size())
                .filter(column -> column == 0 || rows.stream().anyMatch(row -> !row.get(column).isEmpty())).boxed()
                .toList();
        return Optional.of(new Table(caption, kept.stream().map(header::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList()));
    }
}
