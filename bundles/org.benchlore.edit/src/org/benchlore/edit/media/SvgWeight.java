// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Counts how many elements a drawing comes to when everything it uses is drawn: ten lines that use one another ten times
 * each would come to ten thousand million. Circles are refused.
 */
final class SvgWeight {

    private static final long MOST = 200_000;
    private static final String WHOLE = "";

    private final Map<String, Long> own = new HashMap<>();
    private final Map<String, List<String>> uses = new HashMap<>();
    private final Deque<String> open = new ArrayDeque<>(List.of(WHOLE));
    private final Map<String, Long> known = new HashMap<>();
    private final Set<String> counting = new HashSet<>();

    void start(String id) {
        open.push(id == null ? open.peek() : id);
        Set.copyOf(open).forEach(around -> own.merge(around, 1L, Long::sum));
    }

    void end() {
        open.pop();
    }

    void uses(String id) {
        Set.copyOf(open).forEach(around -> uses.computeIfAbsent(around, key -> new ArrayList<>()).add(id));
    }

    /** Tells whether everything drawn stays within bounds. */
    boolean isBounded() {
        return weight(WHOLE) <= MOST;
    }

    private long weight(String id) {
        var before = known.get(id);
        if (before != null) {
            return before;
        }
        if (!counting.add(id)) {
            return MOST + 1;
        }
        long sum = own.getOrDefault(id, 0L);
        for (var used : uses.getOrDefault(id, List.of())) {
            sum = Math.min(MOST + 1, sum + weight(used));
        }
        counting.remove(id);
        known.put(id, sum);
        return sum;
    }
}
