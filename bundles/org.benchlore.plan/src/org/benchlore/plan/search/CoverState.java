// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/** What is decided of a choice problem so far, and the way back. */
final class CoverState {

    static final byte FREE = 0;
    static final byte CHOSEN = 1;
    static final byte BARRED = 2;

    final long[] costs;
    final int[][][] clauses;
    private final int[][] foes;
    private final List<int[]> roots;
    private final byte[] state;
    private final int[] trail;
    private final List<Loop> loops = new ArrayList<>();
    private int decided;
    private long cost;

    /** Nodes that held up only each other: whoever chooses all of them must choose one of the others as well. */
    private record Loop(int[] nodes, int[] others) {
    }

    CoverState(Cover cover) {
        costs = cover.costs();
        clauses = cover.clauses();
        foes = cover.foes();
        roots = cover.roots();
        state = new byte[cover.size()];
        trail = new int[cover.size()];
    }

    byte of(int node) {
        return state[node];
    }

    int size() {
        return state.length;
    }

    long cost() {
        return cost;
    }

    int mark() {
        return decided;
    }

    void undo(int mark) {
        while (decided > mark) {
            int node = trail[--decided];
            if (state[node] == CHOSEN) {
                cost -= costs[node];
            }
            state[node] = FREE;
        }
    }

    boolean choose(int node) {
        if (state[node] != FREE) {
            return state[node] == CHOSEN;
        }
        state[node] = CHOSEN;
        trail[decided++] = node;
        cost += costs[node];
        for (int foe : foes[node]) {
            if (!bar(foe)) {
                return false;
            }
        }
        return true;
    }

    boolean bar(int node) {
        if (state[node] != FREE) {
            return state[node] == BARRED;
        }
        state[node] = BARRED;
        trail[decided++] = node;
        return true;
    }

    boolean isMet(int[] clause) {
        for (int node : clause) {
            if (state[node] == CHOSEN) {
                return true;
            }
        }
        return false;
    }

    /** Clauses that must be met and are not: those of the roots, of chosen nodes, and of loops met before. */
    List<int[]> unmet() {
        var unmet = new ArrayList<int[]>();
        roots.stream().filter(clause -> !isMet(clause)).forEach(unmet::add);
        for (int node = 0; node < state.length; node++) {
            if (state[node] == CHOSEN) {
                Arrays.stream(clauses[node]).filter(clause -> !isMet(clause)).forEach(unmet::add);
            }
        }
        loops.stream().filter(loop -> Arrays.stream(loop.nodes()).allMatch(node -> state[node] == CHOSEN)
                && !isMet(loop.others())).forEach(loop -> unmet.add(loop.others()));
        return unmet;
    }

    /** Decides what is left without a choice; false if that cannot be. */
    boolean propagate() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (var clause : unmet()) {
                int[] free = isMet(clause) ? null : free(clause);
                if (free != null && (free.length == 0 || free.length == 1 && !choose(free[0]))) {
                    return false;
                }
                changed |= free != null && free.length == 1;
            }
        }
        return true;
    }

    int[] free(int[] clause) {
        return Arrays.stream(clause).filter(node -> state[node] == FREE).toArray();
    }

    /** Looks for chosen nodes that hold up only each other, and remembers them; false if there are none. */
    boolean learnsLoop() {
        var founded = founded();
        int[] smallest = null;
        for (int node = 0; node < state.length; node++) {
            if (state[node] == CHOSEN && !founded[node]) {
                int[] loop = leaning(node, founded);
                smallest = smallest == null || loop.length < smallest.length ? loop : smallest;
            }
        }
        if (smallest != null) {
            int[] loop = smallest;
            loops.add(new Loop(loop, Arrays.stream(loop).mapToObj(node -> hanging(node, founded)).flatMapToInt(Arrays::stream)
                    .filter(node -> Arrays.binarySearch(loop, node) < 0).distinct().sorted().toArray()));
        }
        return smallest != null;
    }

    private boolean[] founded() {
        var founded = new boolean[state.length];
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int node = 0; node < state.length; node++) {
                if (state[node] == CHOSEN && !founded[node] && hanging(node, founded) == null) {
                    founded[node] = true;
                    changed = true;
                }
            }
        }
        return founded;
    }

    /** The first clause of a node that nothing founded meets, null if there is none. */
    private int[] hanging(int node, boolean[] founded) {
        for (var clause : clauses[node]) {
            if (Arrays.stream(clause).noneMatch(it -> founded[it])) {
                return clause;
            }
        }
        return null;
    }

    /** A node and all chosen nodes that its hanging clause leads to, in order. */
    private int[] leaning(int node, boolean[] founded) {
        var found = new TreeSet<Integer>();
        var left = new ArrayDeque<>(List.of(node));
        while (!left.isEmpty()) {
            int next = left.pop();
            if (found.add(next)) {
                Arrays.stream(hanging(next, founded)).filter(it -> state[it] == CHOSEN).forEach(left::add);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    boolean[] chosen() {
        var chosen = new boolean[state.length];
        for (int node = 0; node < state.length; node++) {
            chosen[node] = state[node] == CHOSEN;
        }
        return chosen;
    }
}
