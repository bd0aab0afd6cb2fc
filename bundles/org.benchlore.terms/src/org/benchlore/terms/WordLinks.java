// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which word leads to which. From a short form the way goes to the full words and on to their spellings, their equals
 * and short forms, but never through a short form to a different full word: 'operator' leads to 'op', not to
 * 'operate'.
 */
final class WordLinks {
    private final Map<WordForm, String> written = new LinkedHashMap<>();
    private final Map<WordForm, Set<WordForm>> own = new HashMap<>();
    private final Map<WordForm, Set<WordForm>> right = new HashMap<>();
    private final Map<WordForm, Set<WordForm>> full = new HashMap<>();
    private final Map<WordForm, Set<WordForm>> shorter = new HashMap<>();
    private final Map<WordForm, Set<WordForm>> spelling = new HashMap<>();
    private final Map<WordForm, Set<WordForm>> same = new HashMap<>();

    WordLinks(List<WordEntry> builtIn, Collection<List<String>> library) {
        library.forEach(words -> among(words.stream().filter(word -> !WordForm.of(word).isEmpty()).toList(), own));
        builtIn.forEach(this::add);
    }

    private void add(WordEntry entry) {
        switch (entry.kind()) {
            case SAME -> among(entry.words(), same);
            case SPELLING -> among(entry.words(), spelling);
            case SLIP -> entry.others().forEach(slip -> slip(slip, entry.target()));
            case SHORT -> entry.others().forEach(form -> {
                link(form, entry.target(), full);
                link(entry.target(), form, shorter);
            });
        }
    }

    /** What a library lists is no slip there. */
    private void slip(String slip, String target) {
        if (!own.containsKey(WordForm.of(slip))) {
            link(slip, target, right);
        }
    }

    private void among(List<String> words, Map<WordForm, Set<WordForm>> links) {
        words.forEach(from -> words.forEach(to -> link(from, to, links)));
    }

    private void link(String from, String to, Map<WordForm, Set<WordForm>> links) {
        written.putIfAbsent(WordForm.of(from), from.strip());
        written.putIfAbsent(WordForm.of(to), to.strip());
        links.computeIfAbsent(WordForm.of(from), form -> new LinkedHashSet<>()).add(WordForm.of(to));
    }

    /** Returns every word and phrase that stands in an entry, as it is written there first. */
    Map<WordForm, String> all() {
        return written;
    }

    /** Returns the misspellings. */
    Set<WordForm> slips() {
        return Set.copyOf(right.keySet());
    }

    /** Returns what this word leads to, likeliest first: the right word, the library's, full words, equals, short. */
    List<String> from(WordForm word) {
        var meant = right.containsKey(word) ? new LinkedHashSet<>(right.get(word)) : new LinkedHashSet<>(Set.of(word));
        follow(meant, own);
        follow(meant, full);
        follow(meant, spelling);
        follow(meant, own);
        follow(meant, same);
        follow(meant, spelling);
        follow(meant, shorter);
        meant.remove(word);
        return meant.stream().map(written::get).toList();
    }

    private static void follow(Set<WordForm> meant, Map<WordForm, Set<WordForm>> links) {
        List.copyOf(meant).forEach(word -> meant.addAll(links.getOrDefault(word, Set.of())));
    }
}
