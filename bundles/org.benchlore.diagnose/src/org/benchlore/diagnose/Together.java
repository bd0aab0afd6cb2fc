// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;

import org.benchlore.diagnose.Weighing.Weighed;
import org.benchlore.diagnose.book.CaseInHand;
import org.benchlore.model.WeightKind;

/** Says when no single cause accounts for everything that was found, and which ones do together. */
final class Together {

    private final CaseInHand now;
    private final Ranking ranking;

    Together(CaseInHand now, Ranking ranking) {
        this.now = now;
        this.ranking = ranking;
    }

    /** Returns the causes, two or more; empty if one accounts for all that any cause accounts for. */
    List<Named> causes() {
        var left = new LinkedHashSet<Finding>();
        now.findings().stream().filter(finding -> ranking.tied().stream().anyMatch(one -> accounts(one, finding)))
                .forEach(left::add);
        var chosen = new ArrayList<Named>();
        while (!left.isEmpty()) {
            var best = ranking.tied().stream().max(Comparator.comparingLong((Weighed one) -> count(one, left))
                    .thenComparingDouble(ranking::chance)).orElseThrow();
            left.removeIf(finding -> accounts(best, finding));
            chosen.add(new Named(best.candidate().address(), best.candidate().title()));
        }
        return chosen.size() > 1 ? List.copyOf(chosen) : List.of();
    }

    private long count(Weighed one, Iterable<Finding> findings) {
        long count = 0;
        for (var finding : findings) {
            count += accounts(one, finding) ? 1 : 0;
        }
        return count;
    }

    /** That a code only names a component accounts for nothing. */
    private boolean accounts(Weighed one, Finding finding) {
        return one.link(finding) > now.weights().of(WeightKind.CODE_LINKS);
    }
}
