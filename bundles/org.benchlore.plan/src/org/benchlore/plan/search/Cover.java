// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.List;

/**
 * A choice problem over numbered nodes: each has a cost and clauses, lists of nodes of which one must be chosen with it.
 * Roots are clauses that always hold; two nodes of a pair are never chosen together; and what is chosen must hold itself
 * up: it can be put into an order in which each node's clauses are met by nodes before it.
 */
final class Cover {

    /** Inside, costs are in thousandths of a cent, so that an opening that costs nothing is still not made for nothing. */
    static final long PARTS = 1000;

    private final List<Long> costs = new ArrayList<>();
    private final List<List<int[]>> clauses = new ArrayList<>();
    private final List<int[]> roots = new ArrayList<>();
    private final List<int[]> pairs = new ArrayList<>();

    /** A node with a cost in cents. */
    int node(long cost) {
        return add(cost * PARTS);
    }

    /** A node that counts something even where its cost is not known: of equal choices the one with fewer of them is taken. */
    int opening(long cost) {
        return add(Math.max(1, cost * PARTS));
    }

    private int add(long cost) {
        costs.add(cost);
        clauses.add(new ArrayList<>());
        return costs.size() - 1;
    }

    void clause(int node, int... anyOf) {
        clauses.get(node).add(anyOf);
    }

    void root(int... anyOf) {
        roots.add(anyOf);
    }

    void notTogether(int one, int other) {
        pairs.add(new int[] {one, other});
    }

    int size() {
        return costs.size();
    }

    long[] costs() {
        return costs.stream().mapToLong(Long::longValue).toArray();
    }

    int[][][] clauses() {
        return clauses.stream().map(all -> all.toArray(int[][]::new)).toArray(int[][][]::new);
    }

    List<int[]> roots() {
        return roots;
    }

    /** For each node those that it cannot be chosen with. */
    int[][] foes() {
        var foes = new ArrayList<List<Integer>>();
        costs.forEach(cost -> foes.add(new ArrayList<>()));
        pairs.forEach(pair -> {
            foes.get(pair[0]).add(pair[1]);
            foes.get(pair[1]).add(pair[0]);
        });
        return foes.stream().map(all -> all.stream().mapToInt(Integer::intValue).distinct().toArray())
                .toArray(int[][]::new);
    }
}
