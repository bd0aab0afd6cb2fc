// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.util.BytesRef;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.Systems;

/** What an element can be narrowed to and counted by. */
final class FacetValues {

    /** Field and value that mark an element that names no machine. */
    static final String FOR_ALL = "forall";

    private final Library library;
    private final Map<String, Known> systems = new ConcurrentHashMap<>();

    private record Known(Row machine, Systems systems) {
    }

    FacetValues(Library library) {
        this.library = library;
    }

    void addTo(Document document, Row row) {
        for (var facet : Facet.values()) {
            values(facet, row).forEach(value -> {
                document.add(new StringField(facet.field(), value, Field.Store.NO));
                document.add(new SortedSetDocValuesField(facet.field(), new BytesRef(value)));
            });
        }
        if (row.machines().isEmpty()) {
            document.add(new StringField(FOR_ALL, FOR_ALL, Field.Store.NO));
        }
    }

    private Collection<String> values(Facet facet, Row row) {
        return switch (facet) {
            case KIND -> List.of(row.kind().word());
            case MACHINE -> row.machines().stream().map(Address::id).distinct().toList();
            case SYSTEM -> row.machines().stream().flatMap(machine -> systems(machine, row)).distinct().toList();
            case STATUS -> row.status().isEmpty() ? List.of() : List.of(row.status());
            case YEAR -> row.date().map(date -> List.of(Integer.toString(date.getYear()))).orElse(List.of());
        };
    }

    private Stream<String> systems(Address machine, Row row) {
        return library.catalogue().at(machine).filter(known -> known.kind() == Kind.MACHINE)
                .map(known -> systems(known).of(row).stream()).orElse(Stream.empty());
    }

    /** A machine's row is another object as soon as its file has changed. */
    private Systems systems(Row machine) {
        var known = Optional.ofNullable(systems.get(machine.path())).filter(old -> old.machine() == machine)
                .orElseGet(() -> new Known(machine, Systems.of(library, machine)));
        systems.put(machine.path(), known);
        return known.systems();
    }
}
