// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Chooses among things that ask for further openings and share them: two that do not pay alone may pay together.
 * Exact: every set of openings is tried, so there may be 16 of them at most.
 */
public final class SharedOpenings {

    private static final int MOST = 16;

    private SharedOpenings() {
    }

    /**
     * Something that could be added.
     *
     * @param id what it is
     * @param extra its own extra, without openings
     * @param worth what it is worth if done: (p − q) × the cost if it must come apart again
     * @param openings the further openings it needs
     */
    public record Wish(String id, BigDecimal extra, BigDecimal worth, Set<String> openings) {
        BigDecimal gain() {
            return worth.subtract(extra);
        }
    }

    /**
     * What is worth adding together.
     *
     * @param chosen ids in alphabetical order
     * @param openings further openings for them
     * @param gain what it is worth after all its cost; 0 if nothing is chosen
     */
    public record Choice(List<String> chosen, Set<String> openings, BigDecimal gain) {
    }

    /**
     * Chooses what gains most; of equal gains the one with fewer openings.
     *
     * @param wishes what could be added
     * @param costs what each further opening costs, closing included
     * @return the choice
     * @throws IllegalArgumentException if an opening has no cost or there are more than 16
     */
    public static Choice choose(List<Wish> wishes, Map<String, BigDecimal> costs) {
        var needed = new TreeSet<String>();
        wishes.forEach(wish -> needed.addAll(wish.openings()));
        if (needed.size() > MOST || !costs.keySet().containsAll(needed)) {
            throw new IllegalArgumentException("There must be a cost for each opening and no more than " + MOST
                    + " openings: " + needed);
        }
        var openings = List.copyOf(needed);
        var best = choice(wishes, costs, Set.of());
        for (int bits = 1; bits < 1 << openings.size(); bits++) {
            var next = choice(wishes, costs, set(openings, bits));
            int better = next.gain().compareTo(best.gain());
            best = better > 0 || better == 0 && next.openings().size() < best.openings().size() ? next : best;
        }
        return best;
    }

    private static Set<String> set(List<String> openings, int bits) {
        var set = new TreeSet<String>();
        for (int i = 0; i < openings.size(); i++) {
            if ((bits >> i & 1) == 1) {
                set.add(openings.get(i));
            }
        }
        return set;
    }

    private static Choice choice(List<Wish> wishes, Map<String, BigDecimal> costs, Set<String> open) {
        var chosen = new ArrayList<String>();
        var gain = open.stream().map(costs::get).reduce(BigDecimal.ZERO, BigDecimal::add).negate();
        for (var wish : wishes) {
            if (wish.gain().signum() > 0 && open.containsAll(wish.openings())) {
                chosen.add(wish.id());
                gain = gain.add(wish.gain());
            }
        }
        return new Choice(chosen.stream().sorted().toList(), Set.copyOf(open), gain);
    }
}
