// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.Arrays;
import java.util.List;

/**
 * A bound from below by dual ascent: every unmet clause takes as much as its cheapest node still has to give, and takes
 * it from all its nodes; before that, each node draws the same way from its own clauses, so that whatever several need is
 * counted once. What a node has left over is the least that choosing it adds.
 */
final class CoverBound {

    static final long NEVER = Long.MAX_VALUE / 4;

    private final CoverState state;
    private final long[] left;
    private final boolean[] isLifted;
    private long bound;

    CoverBound(CoverState state) {
        this.state = state;
        this.left = new long[state.size()];
        this.isLifted = new boolean[state.size()];
    }

    /** Returns a cost below which nothing that follows from what is decided can fall, NEVER if nothing can follow. */
    long of(List<int[]> unmet) {
        Arrays.fill(isLifted, false);
        for (int node = 0; node < left.length; node++) {
            left[node] = state.of(node) == CoverState.BARRED ? NEVER
                    : state.of(node) == CoverState.CHOSEN ? 0 : state.costs[node];
        }
        bound = state.cost();
        for (var clause : unmet) {
            long taken = draw(clause);
            if (taken >= NEVER) {
                return NEVER;
            }
            bound += taken;
        }
        return bound;
    }

    /** The least that choosing a node adds to the bound. */
    long left(int node) {
        return left[node];
    }

    private long draw(int[] clause) {
        for (int node : clause) {
            lift(node);
        }
        // Only now: lifting one node may draw from another one of the same clause.
        long least = NEVER;
        for (int node : clause) {
            least = Math.min(least, left[node]);
        }
        if (least > 0 && least < NEVER) {
            for (int node : clause) {
                left[node] = left[node] >= NEVER ? NEVER : left[node] - least;
            }
        }
        return least;
    }

    private void lift(int node) {
        if (isLifted[node] || state.of(node) != CoverState.FREE) {
            return;
        }
        isLifted[node] = true;
        for (var clause : state.clauses[node]) {
            if (!state.isMet(clause)) {
                long drawn = draw(clause);
                left[node] = drawn >= NEVER || left[node] >= NEVER ? NEVER : left[node] + drawn;
            }
        }
    }
}
