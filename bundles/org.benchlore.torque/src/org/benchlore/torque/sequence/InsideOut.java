// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * An order over a rectangle from its middle outwards: the place nearest to the middle next; of equals the farthest from
 * the last, so that sides change; of equals the lowest number. Rows and columns are taken as equally far apart.
 */
final class InsideOut {

    private final Layout.Grid grid;
    private final TreeSet<Integer> free = new TreeSet<>();

    private InsideOut(Layout.Grid grid) {
        this.grid = grid;
        for (int place = 1; place <= grid.count(); place++) {
            free.add(place);
        }
    }

    static List<Integer> order(Layout.Grid grid) {
        return new InsideOut(grid).fill();
    }

    private List<Integer> fill() {
        var order = new ArrayList<Integer>();
        while (!free.isEmpty()) {
            int next = next(order);
            free.remove(next);
            order.add(next);
        }
        return List.copyOf(order);
    }

    private int next(List<Integer> order) {
        var nearest = Comparator.comparingInt(this::fromMiddle);
        return free.stream().min(order.isEmpty() ? nearest
                : nearest.thenComparing(Comparator.comparingInt(
                        (Integer place) -> between(place, order.get(order.size() - 1))).reversed())).orElseThrow();
    }

    /** Square of the distance from the middle, in half pitches. */
    private int fromMiddle(int place) {
        int down = 2 * row(place) - (grid.rows() - 1);
        int across = 2 * column(place) - (grid.columns() - 1);
        return down * down + across * across;
    }

    /** Square of the distance between two places, in pitches. */
    private int between(int one, int other) {
        int down = row(one) - row(other);
        int across = column(one) - column(other);
        return down * down + across * across;
    }

    private int row(int place) {
        return (place - 1) / grid.columns();
    }

    private int column(int place) {
        return (place - 1) % grid.columns();
    }
}
