// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;

/**
 * Finds notes that likely say the same. Only notes that share a code, a component or a machine are compared, or, where a
 * note has none of these, those that share two telling words of their titles; so few files are loaded.
 */
public final class Duplicates {

    /**
     * From this likeness on, two notes are shown as likely duplicates. In the demonstration library the one case that was
     * written down twice has 0.48, the next pair, one code on one machine with another finding, 0.46.
     */
    public static final double LIKELY = 0.47;

    private static final int FEWEST_WORDS = 2;

    private final Library library;
    private final Function<String, Set<String>> words;
    private final Map<String, Set<String>> read = new HashMap<>();

    /**
     * Two notes that likely say the same.
     *
     * @param one a note
     * @param other another note
     * @param likeness from {@link #LIKELY} to 1
     */
    public record Pair(Row one, Row other, double likeness) {
    }

    /**
     * Makes a finder.
     *
     * @param library an open library
     * @param words gives the words of a text in the form in which they are compared, such as a search's analysis gives
     */
    public Duplicates(Library library, Function<String, Set<String>> words) {
        this.library = library;
        this.words = words;
    }

    /** Makes a finder that compares plain words. */
    public Duplicates(Library library) {
        this(library, text -> new TextWords(text).telling());
    }

    /**
     * Finds the notes that are like one note.
     *
     * @param note the row of a note
     * @return the pairs with that note as {@code one}, the likest first
     */
    public List<Pair> of(Row note) {
        var own = words(note);
        return library.catalogue().rows(Kind.NOTE)
                .filter(other -> !other.path().equals(note.path()) && isWorthComparing(note, other))
                .map(other -> new Pair(note, other, Likeness.of(note, own, other, words(other))))
                .filter(pair -> pair.likeness() >= LIKELY)
                .sorted(Comparator.comparing(Pair::likeness).reversed()).toList();
    }

    /**
     * Finds the pairs among all notes of which at least one is unsorted.
     *
     * @return the pairs, each once, the likest first
     */
    public List<Pair> amongUnsorted() {
        var found = new ArrayList<Pair>();
        var seen = new LinkedHashSet<Set<String>>();
        SortingDesk.unsorted(library.catalogue()).forEach(note -> of(note).stream()
                .filter(pair -> seen.add(Set.of(pair.one().path(), pair.other().path()))).forEach(found::add));
        found.sort(Comparator.comparing(Pair::likeness).reversed());
        return found;
    }

    private static boolean isWorthComparing(Row one, Row other) {
        if (one.status().equals("SUPERSEDED") || other.status().equals("SUPERSEDED")) {
            return false;
        }
        return shares(Likeness.codes(one), Likeness.codes(other)) || shares(one.components(), other.components())
                || shares(one.machines(), other.machines()) || sharesTitle(one, other);
    }

    private static boolean shares(Collection<?> one, Collection<?> other) {
        return one.stream().anyMatch(other::contains);
    }

    private static boolean sharesTitle(Row one, Row other) {
        var second = new TextWords(other.title()).telling();
        return new TextWords(one.title()).telling().stream().filter(second::contains).count() >= FEWEST_WORDS;
    }

    /** Read once for each state of a file. */
    private Set<String> words(Row row) {
        var hash = library.catalogue().entry(row.path()).map(entry -> entry.hash()).orElse("");
        return read.computeIfAbsent(row.path() + " " + hash, key -> library.top(row.id())
                .filter(FieldNote.class::isInstance).map(FieldNote.class::cast)
                .map(note -> words.apply(text(note))).orElse(Set.of()));
    }

    private static String text(FieldNote note) {
        return String.join("\n", List.of(plain(note.getTitle()), plain(note.getText()), plain(note.getFinding())));
    }

    private static String plain(String text) {
        return text == null ? "" : text;
    }
}
