// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;

/**
 * The facts of every file of a library at one moment. It never changes; a change of the library makes a new one, which
 * shares everything that stayed the same: making it takes time by what changed, not by what there is.
 */
public final class Catalogue {

    /** So many changed files are kept apart before everything is put in order again. */
    private static final int MOST_APART = 500;

    private final CatalogueBase base;
    private final SortedMap<String, Entry> apart;
    private SortedMap<String, Entry> together;

    Catalogue(SortedMap<String, Entry> entries) {
        this(new CatalogueBase(entries), Collections.emptySortedMap());
    }

    private Catalogue(CatalogueBase base, SortedMap<String, Entry> apart) {
        this.base = base;
        this.apart = apart;
    }

    /** Returns a catalogue with this entry in the place of the one with the same path. */
    Catalogue with(Entry entry) {
        var next = new TreeMap<>(apart);
        next.put(entry.path(), entry);
        var changed = new Catalogue(base, Collections.unmodifiableSortedMap(next));
        return next.size() <= MOST_APART ? changed : new Catalogue(changed.asMap());
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
        return asMap().values();
    }

    /**
     * Returns the rows of every readable file, ordered by path.
     *
     * @return the rows
     */
    public Stream<Row> rows() {
        return asMap().values().stream().map(Entry::row).flatMap(Optional::stream);
    }

    /**
     * Returns the rows of one kind, ordered by path.
     *
     * @param kind a kind
     * @return the rows
     */
    public Stream<Row> rows(Kind kind) {
        return mixed(base.rows(kind).stream(), row -> row.kind() == kind);
    }

    /**
     * Returns what is known of a file.
     *
     * @param path path below the library
     * @return the entry, or empty if there is no such file
     */
    public Optional<Entry> entry(String path) {
        var changed = apart.get(path);
        return changed != null ? Optional.of(changed) : base.entry(path);
    }

    /**
     * Finds a top-level element by its id.
     *
     * @param id an id
     * @return its row; of two with the same id, the first by path
     */
    public Optional<Row> byId(String id) {
        return withId(id).findFirst();
    }

    /**
     * Finds every file whose element has an id; there should be one.
     *
     * @param id id of an element
     * @return their facts by path
     */
    public Stream<Row> withId(String id) {
        return mixed(base.rows(id).stream(), row -> row.id().equals(id));
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
        return mixed(base.referringTo(path).stream(), row -> row.refersTo(path))
                .filter(row -> !row.path().equals(path));
    }

    /** Puts the rows of changed files in the place of the older ones, ordered by path. */
    private Stream<Row> mixed(Stream<Row> rows, Predicate<Row> wanted) {
        if (apart.isEmpty()) {
            return rows;
        }
        var changed = apart.values().stream().map(Entry::row).flatMap(Optional::stream)
                .filter(wanted);
        return Stream.concat(rows.filter(row -> !apart.containsKey(row.path())), changed)
                .sorted(Comparator.comparing(Row::path));
    }

    /** Tells whether these are the very same entries. */
    boolean isSameAs(Catalogue other) {
        var own = asMap();
        return own.size() == other.asMap().size()
                && own.values().stream().allMatch(entry -> other.entry(entry.path()).orElse(null) == entry);
    }

    /** Returns all entries by path. */
    synchronized SortedMap<String, Entry> asMap() {
        if (apart.isEmpty()) {
            return base.entries();
        }
        if (together == null) {
            var all = new TreeMap<>(base.entries());
            all.putAll(apart);
            together = Collections.unmodifiableSortedMap(all);
        }
        return together;
    }
}
