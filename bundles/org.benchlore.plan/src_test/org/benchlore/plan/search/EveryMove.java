// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.PriorityQueue;

/**
 * Brute force: every row of single moves (open one access, close one, do one target) from how the machine stands to all
 * done and all closed, the cheapest first. Written from the text of the package only; shares no code with the search.
 * Sets are numbers, a bit for each element.
 */
final class EveryMove {

    private final PlanProblem problem;
    private final Map<String, Integer> access = new HashMap<>();
    private final Map<String, Integer> target = new HashMap<>();
    private final Map<String, Integer> closing = new HashMap<>();
    private final int[] held;
    private final boolean[] permissible;
    private final long[] best;
    private final PriorityQueue<long[]> next = new PriorityQueue<>(Comparator.comparingLong((long[] it) -> it[0]));

    EveryMove(PlanProblem problem) {
        this.problem = problem;
        problem.accesses().forEach(it -> access.put(it.id(), access.size()));
        problem.targets().forEach(it -> target.put(it.id(), target.size()));
        problem.closings().forEach(it -> closing.put(it.id(), closing.size()));
        held = new int[1 << access.size()];
        permissible = new boolean[held.length];
        for (int open = 0; open < held.length; open++) {
            held[open] = heldBy(open);
        }
        for (int open = 0; open < held.length; open++) {
            permissible[open] = open == 0 || isPeaceful(open) && canBeOpened(open);
        }
        best = new long[held.length << target.size() + closing.size() + 1];
        Arrays.fill(best, Long.MAX_VALUE);
    }

    private int heldBy(int open) {
        int found = open;
        for (int before = -1; before != found;) {
            before = found;
            for (var it : problem.accesses()) {
                found |= (before & 1 << access.get(it.id())) == 0 ? 0 : bits(it.covers());
            }
        }
        return found;
    }

    private int bits(List<String> ids) {
        return ids.stream().mapToInt(id -> 1 << access.get(id)).reduce(0, (some, one) -> some | one);
    }

    private boolean isPeaceful(int open) {
        return problem.accesses().stream().noneMatch(it -> (held[open] & 1 << access.get(it.id())) != 0
                && (held[open] & bits(it.notWith())) != 0);
    }

    /** Some access was the last one to be opened, and before it the rest was permissible. */
    private boolean canBeOpened(int open) {
        return problem.accesses().stream().anyMatch(it -> {
            int without = open & ~(1 << access.get(it.id()));
            return without != open && permissible[without] && hold(it.needs(), without);
        });
    }

    private boolean hold(List<List<String>> needs, int open) {
        return needs.stream().allMatch(need -> (bits(need) & held[open]) != 0);
    }

    /** Least cost, empty if there is no plan. */
    OptionalLong cost() {
        int asked = asked(problem.due());
        for (var id : problem.open()) {
            asked |= asked(problem.accesses().get(access.get(id)).closing());
        }
        reach(bits(problem.open()), 0, asked, false, 0);
        long found = Long.MAX_VALUE;
        while (!next.isEmpty() && next.peek()[0] < found) {
            var at = next.poll();
            int place = (int) at[1];
            if (at[0] == best[place]) {
                int rest = place >> access.size();
                if (open(place) == 0 && done(rest) == (1 << target.size()) - 1) {
                    found = Math.min(found, at[0] + closingCost(askedOf(rest)));
                }
                move(at[0], open(place), done(rest), askedOf(rest), (rest & 1) != 0);
            }
        }
        return found == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(found);
    }

    private int open(int place) {
        return place & held.length - 1;
    }

    private int done(int rest) {
        return rest >> 1 & (1 << target.size()) - 1;
    }

    private int askedOf(int rest) {
        return rest >> 1 + target.size();
    }

    private void reach(int open, int done, int asked, boolean isOpening, long cost) {
        int place = open | (isOpening ? 1 : 0) << access.size() | done << access.size() + 1
                | asked << access.size() + 1 + target.size();
        if (cost < best[place]) {
            best[place] = cost;
            next.add(new long[] {cost, place});
        }
    }

    private void move(long cost, int open, int done, int asked, boolean isOpening) {
        for (int i = 0; i < problem.accesses().size(); i++) {
            var it = problem.accesses().get(i);
            int other = open ^ 1 << i;
            boolean opens = (open & 1 << i) == 0;
            if ((opens || !isOpening) && permissible[other]) {
                reach(other, done, asked | (opens ? asked(it.closing()) : 0), opens, cost + (opens ? it.strip() : it.refit()));
            }
        }
        for (int i = 0; i < problem.targets().size(); i++) {
            var it = problem.targets().get(i);
            if ((done & 1 << i) == 0 && it.before().stream().allMatch(id -> !target.containsKey(id)
                    || (done & 1 << target.get(id)) != 0)) {
                for (var option : it.options()) {
                    if (hold(option.needs(), open)) {
                        reach(open, done | 1 << i, asked | asked(it.closing()), isOpening && option.needs().isEmpty(),
                                cost + option.cost());
                    }
                }
            }
        }
    }

    private int asked(List<String> ids) {
        int asked = 0;
        for (var id : ids) {
            asked |= 1 << closing.get(id) | asked(problem.closings().get(closing.get(id)).closing());
        }
        return asked;
    }

    private long closingCost(int asked) {
        return problem.closings().stream().filter(it -> (asked & 1 << closing.get(it.id())) != 0)
                .mapToLong(ClosingWork::cost).sum();
    }
}
