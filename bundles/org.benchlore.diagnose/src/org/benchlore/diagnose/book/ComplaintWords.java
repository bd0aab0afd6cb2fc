// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.benchlore.terms.WordGroups;
import org.benchlore.terms.WordMatch;

/**
 * Reads a text as the set of its words: small words left out, endings taken off, a denial said in one way. Where the
 * library takes words for one another, they meet under one name. Remembers what was read; not safe for several threads.
 */
final class ComplaintWords {

    /** A denial, however it is put. */
    static final String NOT = "not";

    private static final Set<String> SMALL = Set.of(("a an the of is are was were it its in on at to with and or for from after "
            + "when while does do did my i will be been being has have had we you he she they this that there then if just very bit "
            + "as by so too than but also again still now some any all only our your his her him got get gets getting keep keeps "
            + "seem seems said says driver customer since because every once time times come comes really quite about please ok fine").split(" "));
    private static final Pattern DENIAL = Pattern.compile("(won|can|don|doesn|didn|isn|wouldn|couldn|aren)['\u2019]?t|cannot|no|never");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}'\u2019]+");
    private static final List<String> ENDINGS = List.of("ions", "ings", "ion", "ing", "ies", "ed", "es", "ly", "s", "y", "e");
    private static final int SHORTEST = 3;

    private final WordGroups groups;
    private final Map<String, Set<String>> grouped = new HashMap<>();
    private final Map<String, Set<String>> plain = new HashMap<>();
    private final Map<String, Map<String, Set<String>>> runs = new HashMap<>();

    ComplaintWords(WordGroups groups) {
        this.groups = groups;
    }

    /** The words of a text; those that mean the same have the same name. */
    Set<String> grouped(String text) {
        return grouped.computeIfAbsent(text, this::read);
    }

    /** The words of a text, each by itself. */
    Set<String> plain(String text) {
        return plain.computeIfAbsent(text, one -> Set.copyOf(stems(denied(atoms(one), Set.of()), Set.of())));
    }

    /** Runs of several words that the library knows together, under their common name, with the words each is made of. */
    Map<String, Set<String>> runs(String text) {
        return runs.computeIfAbsent(text, this::readRuns);
    }

    private Map<String, Set<String>> readRuns(String text) {
        var said = said(text);
        var found = new HashMap<String, Set<String>>();
        groups.alternatives(said).stream().filter(match -> match.length() > 1)
                .forEach(match -> found.computeIfAbsent(name(said, match), name -> new HashSet<>()).addAll(stems(run(said, match), Set.of())));
        return Map.copyOf(found);
    }

    private static List<String> atoms(String text) {
        return Stream.of(BETWEEN.split(text.toLowerCase(Locale.ROOT))).filter(word -> !word.isEmpty()).toList();
    }

    private Set<String> read(String text) {
        var said = said(text);
        var found = new HashSet<String>();
        groups.alternatives(said).forEach(match -> found.add(name(said, match)));
        found.addAll(stems(said, taken(said)));
        return Set.copyOf(found);
    }

    /** A denial that is part of words known together ('will not start') stays as it is. */
    private List<String> said(String text) {
        var atoms = atoms(text);
        return denied(atoms, taken(atoms));
    }

    private static List<String> run(List<String> said, WordMatch match) {
        return said.subList(match.start(), match.start() + match.length());
    }

    private static String name(List<String> said, WordMatch match) {
        return common(String.join(" ", run(said, match)), match.phrases());
    }

    private Set<Integer> taken(List<String> atoms) {
        var taken = new HashSet<Integer>();
        for (var match : groups.alternatives(atoms)) {
            for (int i = 0; i < match.length(); i++) {
                taken.add(match.start() + i);
            }
        }
        return taken;
    }

    private static List<String> denied(List<String> atoms, Set<Integer> known) {
        var said = new ArrayList<String>();
        for (int i = 0; i < atoms.size(); i++) {
            said.add(!known.contains(i) && DENIAL.matcher(atoms.get(i)).matches() ? NOT : atoms.get(i));
        }
        return said;
    }

    private static Set<String> stems(List<String> atoms, Set<Integer> taken) {
        var found = new HashSet<String>();
        for (int i = 0; i < atoms.size(); i++) {
            if (!taken.contains(i) && !SMALL.contains(atoms.get(i))) {
                found.add(stem(atoms.get(i)));
            }
        }
        return found;
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
