// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.benchlore.terms.WordGroups;

/** How alike two complaints are, whatever words they are put in. Not safe for several threads. */
public final class SymptomWords {

    /** Less alike than this is not alike. */
    static final double ALIKE = 0.5;

    private static final double WITHIN = 0.75;
    private static final int ENOUGH_WORDS = 3;
    private static final Set<String> SMALL = Set.of("a", "an", "the", "of", "is", "are", "was", "were", "it", "its", "in",
            "on", "at", "to", "with", "and", "or", "for", "from", "after", "when", "while", "does", "do", "did", "my", "i", "will", "be",
            "been", "has", "have", "had", "we", "you", "he", "she", "they", "this", "that", "there", "then", "if", "just", "very", "bit");
    private static final Pattern NOT = Pattern.compile("\\b(won|can|don|doesn|didn|isn)['\u2019]?t\\b");
    private static final Pattern CLAUSES = Pattern.compile("[,;.!?]|\\b(and|but)\\b");
    private static final int FEWEST_OF_A_CLAUSE = 2;
    private static final List<String> ENDINGS = List.of("ing", "ed", "es", "s");
    private static final int SHORTEST = 3;

    private final WordGroups groups;
    private final Map<String, Set<String>> known = new HashMap<>();

    /**
     * Makes a comparison.
     *
     * @param groups words that mean the same
     */
    public SymptomWords(WordGroups groups) {
        this.groups = groups;
    }

    /**
     * Says how alike two texts are: twice the words they share, over all their words. Of a complaint of several clauses one may
     * be what is meant: it counts as far as it is alike, times {@value #WITHIN}.
     *
     * @param one a complaint, in anybody's words
     * @param other a text
     * @return 1 for the same words, 0 where less than half is shared
     */
    public double alike(String one, String other) {
        return Math.max(whole(one, other), WITHIN * clauses(one).stream().mapToDouble(clause -> whole(clause, other)).max().orElse(0));
    }

    private List<String> clauses(String text) {
        var clauses = CLAUSES.split(text);
        return clauses.length < 2 ? List.of() : Stream.of(clauses).filter(clause -> words(clause).size() >= FEWEST_OF_A_CLAUSE).toList();
    }

    private double whole(String one, String other) {
        var words = words(one);
        var others = words(other);
        if (words.isEmpty() || others.isEmpty()) {
            return 0;
        }
        var share = 2.0 * words.stream().filter(others::contains).count() / (words.size() + others.size());
        return share >= ALIKE ? share : 0;
    }

    /**
     * Says how alike a text and the nearest of several are.
     *
     * @param one a text
     * @param others texts
     * @return 0 to 1
     */
    public double alike(String one, Collection<String> others) {
        return others.stream().mapToDouble(other -> alike(one, other)).max().orElse(0);
    }

    /**
     * Says whether a longer text speaks of a complaint: it holds every word of it, of which there are at least three.
     *
     * @param complaint a complaint
     * @param text a longer text
     * @return 0 or {@value #WITHIN}, less than the same words by themselves
     */
    public double within(String complaint, String text) {
        var words = words(complaint);
        return words.size() >= ENOUGH_WORDS && words(text).containsAll(words) ? WITHIN : 0;
    }

    /** Returns how many words of a text another one shares. */
    long shared(String one, String other) {
        var others = words(other);
        return words(one).stream().filter(others::contains).count();
    }

    Set<String> words(String text) {
        return known.computeIfAbsent(text, this::read);
    }

    private Set<String> read(String text) {
        var plain = NOT.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("not");
        var atoms = Stream.of(plain.split("[^\\p{L}\\p{N}]+")).filter(word -> !word.isEmpty()).toList();
        var found = new HashSet<String>();
        var taken = new HashSet<Integer>();
        for (var match : groups.alternatives(atoms)) {
            var run = String.join(" ", atoms.subList(match.start(), match.start() + match.length()));
            found.add(common(run, match.phrases()));
            for (int i = 0; i < match.length(); i++) {
                taken.add(match.start() + i);
            }
        }
        for (int i = 0; i < atoms.size(); i++) {
            if (!taken.contains(i) && !SMALL.contains(atoms.get(i))) {
                found.add(stem(atoms.get(i)));
            }
        }
        return Set.copyOf(found);
    }

    /** The name under which words that mean the same meet: the first of them in the alphabet. */
    private static String common(String run, List<String> phrases) {
        return Stream.concat(Stream.of(run), phrases.stream())
                .map(phrase -> stem(phrase.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ")))
                .min(String::compareTo).orElse(run);
    }

    private static String stem(String word) {
        return ENDINGS.stream().filter(ending -> word.endsWith(ending) && word.length() - ending.length() >= SHORTEST)
                .findFirst().map(ending -> single(word.substring(0, word.length() - ending.length())))
                .orElseGet(() -> single(word));
    }

    /** 'stopp' of 'stopped' is 'stop', and 'roll' is what 'rolled' comes to. */
    private static String single(String stem) {
        int last = stem.length() - 1;
        return last > SHORTEST - 1 && stem.charAt(last) == stem.charAt(last - 1) ? stem.substring(0, last) : stem;
    }
}
