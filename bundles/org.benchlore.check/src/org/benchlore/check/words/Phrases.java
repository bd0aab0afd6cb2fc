// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.benchlore.terms.WordGroups;

/**
 * Phrases that all speak of one thing, with those that the glossary says mean the same. A phrase is found where its
 * words stand in a row. Where 'not', 'never', 'no', 'nor' or 'without' stands up to three words before it, the text warns
 * of it and does not ask for it.
 */
public final class Phrases {

    private static final Set<String> NEGATIONS = Set.of("not", "never", "no", "nor", "without");
    private static final int REACH = 3;

    private final Map<String, List<List<String>>> byFirst = new HashMap<>();

    private Phrases(Set<String> phrases) {
        for (var phrase : phrases) {
            var words = Text.of(phrase).words();
            if (!words.isEmpty()) {
                byFirst.computeIfAbsent(words.get(0), first -> new ArrayList<>()).add(words);
            }
        }
    }

    /** Makes phrases, with what the groups say means the same as each whole phrase. */
    public static Phrases of(WordGroups groups, String... phrases) {
        var all = new LinkedHashSet<>(Arrays.asList(phrases));
        for (var phrase : phrases) {
            var words = List.of(phrase.split(" "));
            groups.alternatives(words).stream().filter(match -> match.length() == words.size())
                    .forEach(match -> all.addAll(match.phrases()));
        }
        return new Phrases(all);
    }

    /** Makes phrases as they are, for words that mean something else elsewhere. */
    public static Phrases exactly(String... phrases) {
        return new Phrases(new LinkedHashSet<>(Arrays.asList(phrases)));
    }

    /** Whether a text speaks of it at all. */
    public boolean isIn(Text text) {
        return find(text, true);
    }

    /** Whether a text speaks of it without a 'not' before it. */
    public boolean isAskedIn(Text text) {
        return find(text, false);
    }

    private boolean find(Text text, boolean alsoNegated) {
        var words = text.words();
        for (int i = 0; i < words.size(); i++) {
            for (var phrase : byFirst.getOrDefault(words.get(i), List.of())) {
                int end = i + phrase.size();
                if (end <= words.size() && words.subList(i, end).equals(phrase) && (alsoNegated || !isNegated(words, i))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isNegated(List<String> words, int at) {
        for (int i = at - 1; i >= Math.max(0, at - REACH); i--) {
            if (words.get(i).equals(Text.STOP)) {
                return false;
            }
            if (NEGATIONS.contains(words.get(i))) {
                return true;
            }
        }
        return false;
    }
}
