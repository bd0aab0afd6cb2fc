// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

import org.benchlore.evidence.decide.Option;
import org.benchlore.evidence.decide.SharedOpenings;
import org.benchlore.evidence.decide.SharedOpenings.Wish;
import org.benchlore.plan.adding.Adding.Together;

/** Puts proposals in order and finds what is worth adding together. */
final class Ranking {

    private static final int MOST = 16;

    private Ranking() {
    }

    /** What saves the customer most first; of equals what costs least now. */
    static List<Proposal> sorted(List<Proposal> proposals) {
        return proposals.stream().sorted(Comparator.comparing(Ranking::saving).reversed()
                .thenComparing(it -> it.assumptions().value(Figure.EXTRA)).thenComparing(Proposal::id)).toList();
    }

    /** Saving is below zero where adding costs more than it is worth; what is not known stands last. */
    private static BigDecimal saving(Proposal proposal) {
        var costs = proposal.decision().customer().costs();
        return costs.isEmpty() ? BigDecimal.valueOf(-1e12) : costs.get(Option.LEAVE).subtract(costs.get(Option.RENEW));
    }

    /** Empty where nothing needs a further opening, or more than can be tried out. */
    static Optional<Together> together(List<Proposal> proposals) {
        var costs = new TreeMap<String, BigDecimal>();
        var wishes = new ArrayList<Wish>();
        for (var proposal : proposals) {
            costs.putAll(proposal.openings());
            proposal.worth().ifPresent(worth -> wishes.add(new Wish(proposal.id(), own(proposal), worth,
                    proposal.openings().keySet())));
        }
        if (costs.isEmpty() || costs.size() > MOST) {
            return Optional.empty();
        }
        var choice = SharedOpenings.choose(wishes, costs);
        return Optional.of(new Together(choice.chosen(), choice.openings().stream().sorted().toList(), choice.gain()));
    }

    /** Its extra without what it opens. */
    private static BigDecimal own(Proposal proposal) {
        var openings = proposal.openings().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return proposal.assumptions().value(Figure.EXTRA).subtract(openings).max(BigDecimal.ZERO);
    }
}
