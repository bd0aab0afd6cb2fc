// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Words that a search takes for one another: the built-in list and a library's own entries, which come first and make
 * a word right that the built-in list calls a misspelling. Immutable; safe for several threads.
 */
public final class WordGroups {
    private final Map<String, List<String>> known = new HashMap<>();
    private final Map<String, List<String>> knownJoined = new HashMap<>();
    private final Set<WordForm> slips;

    /**
     * Makes the groups of these entries.
     *
     * @param library each a list of words and phrases that mean the same; blank ones and lists of one are passed over
     */
    public WordGroups(List<WordEntry> builtIn, Collection<List<String>> library) {
        var links = new WordLinks(builtIn, library);
        slips = links.slips();
        links.all().forEach((form, written) -> add(form, written, links.from(form)));
    }

    /** Makes the groups of the built-in list and a library's own entries. */
    public static WordGroups withBuiltIn(Collection<List<String>> library) {
        return new WordGroups(BuiltInWords.entries(), library);
    }

    private void add(WordForm form, String written, List<String> phrases) {
        known.put(form.spaced(), phrases);
        if (!phrases.isEmpty() && form.isFoundJoined()) {
            knownJoined.putIfAbsent(form.joined(), Stream.concat(Stream.of(written), phrases.stream()).toList());
        }
    }

    /**
     * Returns the runs of these words for which other words are known, from left to right, the longest first at each
     * place and none overlapping. Capitals and marks within a word do not matter; plurals, past and -ing forms are
     * found by their base; a run with a digit only exactly as listed. Takes time linear in the length of the text.
     */
    public List<WordMatch> alternatives(List<String> words) {
        var forms = words.stream().map(WordForm::of).toList();
        var found = new ArrayList<WordMatch>();
        int at = 0;
        while (at < forms.size()) {
            var match = longestAt(at, forms);
            match.ifPresent(found::add);
            at += match.map(WordMatch::length).orElse(1);
        }
        return found;
    }

    private Optional<WordMatch> longestAt(int start, List<WordForm> forms) {
        for (int length = Math.min(WordEntry.LONGEST, forms.size() - start); length > 0; length--) {
            var run = forms.subList(start, start + length);
            if (!run.get(0).isEmpty() && !run.get(length - 1).isEmpty()) {
                var phrases = phrases(WordForm.of(run));
                if (!phrases.isEmpty()) {
                    return Optional.of(new WordMatch(start, length, phrases));
                }
            }
        }
        return Optional.empty();
    }

    private List<String> phrases(WordForm run) {
        var exact = known.getOrDefault(run.spaced(), List.of());
        if (!exact.isEmpty() || run.hasDigit()) {
            return exact;
        }
        var joined = joined(run);
        return joined.isEmpty() && run.mayHaveBases() ? phrasesOfBase(run) : joined;
    }

    /** A right word is no form of a misspelling: 'manifold' does not come from 'manifol'. */
    private List<String> phrasesOfBase(WordForm run) {
        boolean right = known.containsKey(run.spaced());
        return run.bases().filter(base -> !right || !slips.contains(base))
                .flatMap(base -> Stream.of(known.getOrDefault(base.spaced(), List.of()), joined(base)))
                .filter(phrases -> !phrases.isEmpty()).findFirst().orElse(List.of());
    }

    /** What the run leads to with its blanks elsewhere; the phrase as it is listed is then an alternative itself. */
    private List<String> joined(WordForm run) {
        return knownJoined.getOrDefault(run.joined(), List.of());
    }
}
