// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * An order round a circle by a stated rule: next the free place farthest from all taken ones, of equals the farthest from
 * the last, of equals the lowest number. With an even number opposite places follow each other by themselves.
 */
final class SpreadRule {

    private final int count;
    private final List<Integer> order = new ArrayList<>();
    private final TreeSet<Integer> free = new TreeSet<>();

    private SpreadRule(int count) {
        this.count = count;
        for (int place = 1; place <= count; place++) {
            free.add(place);
        }
    }

    static List<Integer> order(int count) {
        return new SpreadRule(count).fill();
    }

    private List<Integer> fill() {
        take(1);
        while (!free.isEmpty()) {
            take(farthest());
        }
        return List.copyOf(order);
    }

    private void take(int place) {
        free.remove(place);
        order.add(place);
    }

    private int last() {
        return order.get(order.size() - 1);
    }

    private int farthest() {
        return free.stream().max(Comparator.comparingInt(this::room)
                .thenComparingInt(place -> distance(place, last()))
                .thenComparing(Comparator.<Integer>reverseOrder())).orElseThrow();
    }

    /** Distance to the nearest place taken. */
    private int room(int place) {
        return order.stream().mapToInt(taken -> distance(place, taken)).min().orElseThrow();
    }

    private int distance(int one, int other) {
        int way = Math.abs(one - other);
        return Math.min(way, count - way);
    }
}
