// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.terms.WordGroups;

/** How alike two complaints are, whatever words they are put in. Not safe for several threads. */
public final class SymptomWords {

    /** Less alike than this is not alike. */
    static final double ALIKE = 0.5;

    /** What something counts that is only a part of what was said. */
    static final double WITHIN = 0.75;

    private static final double STRANGE = 0.25;
    private static final int ENOUGH_WORDS = 3;
    private static final int FEWEST = 2;
    private static final Pattern CLAUSES = Pattern.compile("[,;.!?]|\\b(and|but)\\b");

    private final ComplaintWords reader;
    private final Set<String> used;
    private final Set<String> names;

    /**
     * Makes a comparison in which every word counts the same.
     *
     * @param groups words that mean the same
     */
    public SymptomWords(WordGroups groups) {
        this(new ComplaintWords(groups), Set.of(), Set.of());
    }

    private SymptomWords(ComplaintWords reader, Set<String> used, Set<String> names) {
        this.reader = reader;
        this.used = used;
        this.names = names;
    }

    /**
     * Makes a comparison for one machine: a word that none of its papers uses, such as whom the driver asked, counts a
     * quarter; what the unit is called says nothing of what is wrong with it.
     *
     * @param papers what its papers say
     * @param name what the unit is called; empty if only the machine is known
     * @return the comparison; it remembers what this one has read
     */
    public SymptomWords among(Collection<String> papers, String name) {
        return new SymptomWords(reader, all(papers), all(List.of(name)));
    }

    private Set<String> all(Collection<String> texts) {
        var all = new HashSet<String>();
        texts.forEach(text -> {
            all.addAll(reader.grouped(text));
            all.addAll(reader.plain(text));
        });
        return all;
    }

    /**
     * Says how alike two texts are: twice the words they share, over all their words. Words that mean the same are the same; where
     * that hides what is put alike, the plain words count, if two are shared that are not part of a run with another meaning. Of a complaint of several clauses one may be
     * what is meant, and a longer text may hold the shorter: each counts as far as it is alike, times {@value #WITHIN}.
     *
     * @param one a complaint, in anybody's words
     * @param other a text
     * @return 1 for the same words, 0 where less than half is shared
     */
    public double alike(String one, String other) {
        var clauses = clauses(one).stream().mapToDouble(clause -> whole(clause, other)).max().orElse(0);
        return Math.max(asOne(one, other), WITHIN * clauses);
    }

    /**
     * Says how near two texts come, where they are not alike: the share of their words, of the nearest clause, however small.
     *
     * @param one a complaint, in anybody's words
     * @param other a text
     * @return 0 to 1
     */
    double near(String one, String other) {
        return Stream.concat(Stream.of(one), clauses(one).stream())
                .mapToDouble(clause -> Math.max(near(words(clause), words(other)), near(plain(clause), plain(other)))).max().orElse(0);
    }

    private double near(Set<String> words, Set<String> others) {
        var common = common(words, others);
        common.remove(ComplaintWords.NOT);
        var all = weight(words) + weight(others);
        return all == 0 ? 0 : 2 * weight(common) / all;
    }

    /** As {@link #alike(String, String)}, of a complaint or a clause that is meant as one. */
    double asOne(String one, String other) {
        return Math.max(whole(one, other), WITHIN * held(one, other));
    }

    /** What a complaint of several clauses says one by one, each in two words or more; nothing if it is one. */
    List<String> clauses(String text) {
        var clauses = CLAUSES.split(text);
        return clauses.length < 2 ? List.of() : Stream.of(clauses).filter(clause -> plain(clause).size() >= FEWEST).toList();
    }

    private double whole(String one, String other) {
        return Math.max(share(words(one), words(other), common(words(one), words(other))), plain(one, other));
    }

    /** By the words alone; those of a run that only one of the two holds mean nothing by themselves: 'drops slowly' is not 'slow'. */
    private double plain(String one, String other) {
        var plain = plain(one);
        var others = plain(other);
        var common = common(plain, others);
        common.removeAll(ofOtherRuns(one, other));
        common.removeAll(ofOtherRuns(other, one));
        return telling(common) >= FEWEST ? share(plain, others, common) : 0;
    }

    private Set<String> ofOtherRuns(String one, String other) {
        return reader.runs(one).entrySet().stream().filter(run -> !words(other).contains(run.getKey()))
                .flatMap(run -> run.getValue().stream()).collect(Collectors.toSet());
    }

    private double share(Set<String> words, Set<String> others, Set<String> common) {
        var all = weight(words) + weight(others);
        var share = all == 0 ? 0 : 2 * weight(common) / all;
        return share >= ALIKE ? share : 0;
    }

    /** Whether the one with fewer words, of which there are two or more, is part of the other. */
    private double held(String one, String other) {
        var words = words(one);
        var others = words(other);
        var fewer = words.size() < others.size() ? words : others;
        return telling(fewer) >= FEWEST && common(words, others).size() == fewer.size() ? 1 : 0;
    }

    /** How many words say what: that something is not so says nothing by itself. */
    private static long telling(Set<String> words) {
        return words.stream().filter(word -> !word.equals(ComplaintWords.NOT)).count();
    }

    private double weight(Set<String> words) {
        return words.stream().mapToDouble(word -> used.isEmpty() || used.contains(word) ? 1 : STRANGE).sum();
    }

    private static Set<String> common(Set<String> words, Set<String> others) {
        var common = new HashSet<>(words);
        common.retainAll(others);
        return common;
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
        return common(words(one), words(other)).size();
    }

    /** Whether two texts share nothing but words of a name that the first of them says in full. */
    boolean shareOnly(String one, String other, String name) {
        return words(one).containsAll(words(name)) && words(name).containsAll(common(words(one), words(other)))
                && plain(name).containsAll(common(plain(one), plain(other)));
    }

    Set<String> words(String text) {
        return without(reader.grouped(text));
    }

    private Set<String> plain(String text) {
        return without(reader.plain(text));
    }

    private Set<String> without(Set<String> words) {
        if (names.isEmpty() || words.stream().noneMatch(names::contains)) {
            return words;
        }
        var left = new HashSet<>(words);
        left.removeAll(names);
        return left;
    }
}
