// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;

/** Entries of a catalogue with what finds them: by path, id, kind and by what they refer to. It never changes. */
final class CatalogueBase {

    private final SortedMap<String, Entry> entries;
    private final Map<String, Entry> byPath = new HashMap<>();
    private final Map<String, List<Row>> byId = new HashMap<>();
    private final Map<Kind, List<Row>> byKind = new EnumMap<>(Kind.class);
    private Map<String, List<Row>> referring;

    CatalogueBase(SortedMap<String, Entry> entries) {
        this.entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
        for (var entry : this.entries.values()) {
            byPath.put(entry.path(), entry);
            entry.row().ifPresent(this::add);
        }
    }

    private void add(Row row) {
        byKind.computeIfAbsent(row.kind(), kind -> new ArrayList<>()).add(row);
        byId.merge(row.id(), List.of(row), CatalogueBase::both);
    }

    private static List<Row> both(List<Row> some, List<Row> more) {
        var all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    SortedMap<String, Entry> entries() {
        return entries;
    }

    Optional<Entry> entry(String path) {
        return Optional.ofNullable(byPath.get(path));
    }

    /** Returns the rows with this id, ordered by path: more than one only where an id was used twice. */
    List<Row> rows(String id) {
        return byId.getOrDefault(id, List.of());
    }

    List<Row> rows(Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    /** Returns the rows that refer to a file. Put in order on the first question, which mostly is never asked. */
    synchronized List<Row> referringTo(String path) {
        if (referring == null) {
            referring = new HashMap<>();
            byKind.values().forEach(rows -> rows.forEach(row -> row.references().stream().map(Address::path).distinct()
                    .forEach(target -> referring.computeIfAbsent(target, key -> new ArrayList<>()).add(row))));
            referring.values().forEach(rows -> rows.sort(java.util.Comparator.comparing(Row::path)));
        }
        return referring.getOrDefault(path, List.of());
    }
}
