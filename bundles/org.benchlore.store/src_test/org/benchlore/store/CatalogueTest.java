// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue.Entry;
import org.benchlore.store.Catalogue.Stamp;
import org.junit.jupiter.api.Test;

/** A catalogue that was changed one file at a time answers as one that was made of the same files at once. */
class CatalogueTest {

    private static final int MANY = 1_200;

    private static Entry part(int number, String title, List<Address> references) {
        var id = "part-" + number;
        var path = Kind.PART.path(id);
        var row = new Row(new Address(path, id), Kind.PART, title, "", Optional.empty(), true, List.of(), List.of(),
                List.of(), List.of(), List.of(), Optional.empty(), references, Set.of(), Optional.empty(), title.hashCode());
        return new Entry(path, new Stamp(1, number), title, Optional.of(row), List.of());
    }

    private static Address address(int number) {
        return new Address(Kind.PART.path("part-" + number), "part-" + number);
    }

    private static Catalogue atOnce(List<Entry> entries) {
        var map = new TreeMap<String, Entry>();
        entries.forEach(entry -> map.put(entry.path(), entry));
        return new Catalogue(map);
    }

    private static Catalogue oneByOne(List<Entry> before, List<Entry> changes) {
        var catalogue = atOnce(before);
        for (var change : changes) {
            catalogue = catalogue.with(change);
        }
        return catalogue;
    }

    @Test
    void changedOneByOneItAnswersAsMadeAtOnce() {
        var before = new java.util.ArrayList<Entry>();
        var changes = new java.util.ArrayList<Entry>();
        for (int i = 0; i < MANY; i++) {
            before.add(part(i, "Old " + i, List.of(address(i + 1))));
            if (i % 2 == 0) {
                changes.add(part(i, "New " + i, List.of(address(i + 2))));
            }
            changes.add(part(MANY + i, "More " + i, List.of()));
        }
        var all = new java.util.ArrayList<>(before);
        all.addAll(changes);
        var expected = atOnce(all);
        var catalogue = oneByOne(before, changes);
        assertEquals(List.copyOf(expected.entries()), List.copyOf(catalogue.entries()));
        assertEquals(expected.rows().toList(), catalogue.rows().toList());
        assertEquals(expected.rows(Kind.PART).toList(), catalogue.rows(Kind.PART).toList());
        for (int i = 0; i < 2 * MANY; i += 7) {
            var path = address(i).path();
            assertEquals(expected.entry(path), catalogue.entry(path));
            assertEquals(expected.byId("part-" + i), catalogue.byId("part-" + i));
            assertEquals(expected.referringTo(path).toList(), catalogue.referringTo(path).toList());
        }
    }

    @Test
    void theOldOneStaysAsItWas() {
        var before = atOnce(List.of(part(1, "Old", List.of())));
        var after = before.with(part(1, "New", List.of()));
        assertEquals("Old", before.byId("part-1").orElseThrow().title());
        assertEquals("New", after.byId("part-1").orElseThrow().title());
        assertTrue(before.with(part(2, "More", List.of())).entry(address(2).path()).isPresent());
        assertTrue(before.entry(address(2).path()).isEmpty());
    }

    @Test
    void ofTwoWithTheSameIdTheFirstByPathCounts() {
        var one = part(1, "One", List.of());
        var row = one.row().orElseThrow();
        var path = "parts/a-first.xmi";
        var twin = new Row(new Address(path, row.id()), Kind.PART, "Twin", "", Optional.empty(), true, List.of(),
                List.of(), List.of(), List.of(), List.of(), Optional.empty(), List.of(), Set.of(), Optional.empty(), 0);
        var entry = new Entry(path, new Stamp(1, 1), "twin", Optional.of(twin), List.of());
        assertSame(twin, atOnce(List.of(one, entry)).byId("part-1").orElseThrow());
        assertSame(twin, atOnce(List.of(one)).with(entry).byId("part-1").orElseThrow());
    }
}
