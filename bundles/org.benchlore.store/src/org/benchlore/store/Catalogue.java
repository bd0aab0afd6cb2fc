// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;

/** The facts of every file of a library at one moment. It never changes; a change of the library makes a new one. */
public final class Catalogue {

    private final SortedMap<String, Entry> entries;
    private final Map<String, Entry> byId = new TreeMap<>();

    Catalogue(SortedMap<String, Entry> entries) {
        this.entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
        for (var entry : this.entries.values()) {
            entry.row().ifPresent(row -> byId.putIfAbsent(row.id(), entry));
        }
    }

    /**
     * What is known of one file.
     *
     * @param path path below the library
     * @param stamp its size and time when it was read
     * @param hash SHA-256 of its bytes
     * @param row the facts, empty if it cannot be read
     * @param problems what could not be read in it
     */
    public record Entry(String path, Stamp stamp, String hash, Optional<Row> row, List<FileProblem> problems) {
    }

    /**
     * Size and time of a file, by which a change is noticed.
     *
     * @param size bytes
     * @param modified nanoseconds since 1970
     */
    public record Stamp(long size, long modified) {
    }

    /**
     * Returns every file, ordered by path.
     *
     * @return the entries
     */
    public Collection<Entry> entries() {
        return entries.values();
    }

    /**
     * Returns the rows of every readable file, ordered by path.
     *
     * @return the rows
     */
    public Stream<Row> rows() {
        return entries.values().stream().map(Entry::row).flatMap(Optional::stream);
    }

    /**
     * Returns the rows of one kind, ordered by path.
     *
     * @param kind a kind
     * @return the rows
     */
    public Stream<Row> rows(Kind kind) {
        return rows().filter(row -> row.kind() == kind);
    }

    /**
     * Returns what is known of a file.
     *
     * @param path path below the library
     * @return the entry, or empty if there is no such file
     */
    public Optional<Entry> entry(String path) {
        return Optional.ofNullable(entries.get(path));
    }

    /**
     * Finds a top-level element by its id.
     *
     * @param id an id
     * @return its row; of two with the same id, the first by path
     */
    public Optional<Row> byId(String id) {
        return Optional.ofNullable(byId.get(id)).flatMap(Entry::row);
    }

    /**
     * Finds an element of any depth.
     *
     * @param address file and id
     * @return the row of its file, or empty if the element does not exist
     */
    public Optional<Row> at(Address address) {
        return entry(address.path()).flatMap(Entry::row)
                .filter(row -> row.id().equals(address.id()) || row.innerIds().contains(address.id()));
    }

    /**
     * Finds everything that refers to a file's element or to an element in it.
     *
     * @param path path of a file
     * @return rows of other files
     */
    public Stream<Row> referringTo(String path) {
        return rows().filter(row -> !row.path().equals(path))
                .filter(row -> row.references().stream().anyMatch(target -> target.path().equals(path)));
    }

    SortedMap<String, Entry> asMap() {
        return entries;
    }
}
