// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

import org.benchlore.model.Kind;
import org.benchlore.store.Row;

/**
 * How alike two notes are, from 0 to 1: 0.3 for the share of fault codes in common, 0.2 for that of components, 0.1 for
 * that of machines, and 0.4 for that of words. A share is what both have, divided by what either has; where neither has
 * any, it is left out and the others count for more. Common practice, no source: weights set by hand.
 */
final class Likeness {

    private static final double CODES = 0.3;
    private static final double COMPONENTS = 0.2;
    private static final double MACHINES = 0.1;
    private static final double WORDS = 0.4;

    private double sum;
    private double weight;

    private Likeness() {
    }

    /** Of two notes with the words of their texts. */
    static double of(Row one, Set<String> words, Row other, Set<String> otherWords) {
        var likeness = new Likeness();
        likeness.add(CODES, codes(one), codes(other));
        likeness.add(COMPONENTS, one.components(), other.components());
        likeness.add(MACHINES, one.machines(), other.machines());
        likeness.add(WORDS, words, otherWords);
        return likeness.weight == 0 ? 0 : likeness.sum / likeness.weight;
    }

    /** The library's codes that a note refers to, and those it holds as they are written. */
    static Set<String> codes(Row note) {
        var codes = new HashSet<>(note.codes());
        note.references().stream().filter(address -> address.path().startsWith(Kind.CODE.folder() + "/"))
                .forEach(address -> codes.add(address.path()));
        return codes;
    }

    private void add(double part, Collection<?> one, Collection<?> other) {
        var either = new HashSet<Object>(one);
        either.addAll(other);
        if (!either.isEmpty()) {
            var both = new HashSet<Object>(one);
            both.retainAll(Set.copyOf(other));
            sum += part * both.size() / either.size();
            weight += part;
        }
    }
}
