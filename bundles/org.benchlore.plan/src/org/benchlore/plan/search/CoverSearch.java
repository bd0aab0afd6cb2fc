// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Branch and bound over a choice problem. The same problem is searched in the same order on every machine. */
final class CoverSearch {

    private final CoverState state;
    private final CoverBound bounds;
    private final long most;
    private long best;
    private boolean[] chosen;
    private long branches;
    private long atRoot = -1;

    /**
     * Prepares a search.
     *
     * @param below only choices that cost less are of interest, in cents
     * @param most most branches looked at
     */
    CoverSearch(Cover cover, long below, long most) {
        this.state = new CoverState(cover);
        this.bounds = new CoverBound(state);
        this.best = below >= CoverBound.NEVER ? CoverBound.NEVER : below * Cover.PARTS;
        this.most = most;
    }

    /** Searches; returns which nodes are chosen, empty if nothing cheaper was found. */
    Optional<boolean[]> run() {
        branch();
        return Optional.ofNullable(chosen);
    }

    /** Cost of what is chosen, in cents. */
    long cost() {
        return best / Cover.PARTS;
    }

    long branches() {
        return branches;
    }

    boolean isCutOff() {
        return branches >= most;
    }

    /** No choice at all costs less than this, in cents. */
    long bound() {
        return Math.max(0, atRoot) / Cover.PARTS;
    }

    private void branch() {
        if (isCutOff()) {
            return;
        }
        branches++;
        int mark = state.mark();
        if (state.propagate()) {
            decide();
        }
        state.undo(mark);
    }

    private void decide() {
        var unmet = state.unmet();
        long bound = bounds.of(unmet);
        atRoot = atRoot < 0 ? bound : atRoot;
        if (bound >= best) {
            return;
        }
        if (unmet.isEmpty()) {
            finish();
            return;
        }
        var order = alternatives(unmet);
        if (!barDear(bound) || !state.propagate()) {
            return;
        }
        tryEach(order);
    }

    /** Bars nodes that cannot be chosen any more without passing the best cost. */
    private boolean barDear(long bound) {
        for (int node = 0; node < state.size(); node++) {
            if (state.of(node) == CoverState.FREE && bound + bounds.left(node) >= best && !state.bar(node)) {
                return false;
            }
        }
        return true;
    }

    private int[] alternatives(List<int[]> unmet) {
        int[] smallest = null;
        for (var clause : unmet) {
            int[] free = state.free(clause);
            if (smallest == null || free.length < smallest.length) {
                smallest = free;
            }
        }
        return IntStream.of(smallest).boxed().sorted(Comparator.comparingLong((Integer node) -> bounds.left(node))
                .thenComparing(Comparator.naturalOrder())).mapToInt(Integer::intValue).toArray();
    }

    /** Each alternative in turn; whatever was tried is barred for the next, so that no choice is looked at twice. */
    private void tryEach(int[] alternatives) {
        if (Arrays.stream(alternatives).anyMatch(node -> state.of(node) == CoverState.CHOSEN)) {
            branch();
            return;
        }
        for (int node : alternatives) {
            if (state.of(node) == CoverState.FREE) {
                int mark = state.mark();
                if (state.choose(node)) {
                    branch();
                }
                state.undo(mark);
                state.bar(node);
            }
        }
    }

    /** Nothing is left to decide: either it stands, or what holds up only itself is learned and the search goes on. */
    private void finish() {
        if (state.learnsLoop()) {
            branch();
        } else {
            best = state.cost();
            chosen = state.chosen();
        }
    }
}
