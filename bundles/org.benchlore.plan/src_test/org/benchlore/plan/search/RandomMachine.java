// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Invented machines: needs with alternatives, covers in both directions, circles, and accesses that are not with each other,
 * every third small one with many of these. */
final class RandomMachine {

    private final Random random;
    private final int size;
    private final int targets;
    private final int foes;

    RandomMachine(long seed, int size, int targets) {
        this.random = new Random(seed);
        this.size = size;
        this.targets = targets;
        this.foes = size <= 12 && seed % 3 == 0 ? 3 : 9;
    }

    PlanProblem problem() {
        var accesses = IntStream.range(0, size).mapToObj(this::access).toList();
        int works = 1 + random.nextInt(targets);
        var all = IntStream.range(0, works).mapToObj(this::target).toList();
        var closings = List.of(new ClosingWork("f0", random.nextInt(60), List.of()),
                new ClosingWork("f1", random.nextInt(60), random.nextBoolean() ? List.of("f0") : List.of()),
                new ClosingWork("f2", random.nextInt(60), random.nextInt(3) == 0 ? List.of("f1") : List.of()));
        var due = random.nextInt(6) == 0 ? List.of("f0") : List.<String>of();
        return new PlanProblem(accesses, all, closings, List.of(), due);
    }

    static String name(int number) {
        return (number < 10 ? "a0" : "a") + number;
    }

    private AccessNode access(int number) {
        return new AccessNode(name(number), random.nextInt(90), random.nextInt(90), needs(number, number, 2),
                some(size, random.nextInt(5) == 0 ? 1 + random.nextInt(2) : 0, number),
                some(size, random.nextInt(foes) == 0 ? 1 : 0, number), closing(4));
    }

    /** Now and then a need looks ahead, so that circles occur. */
    private List<List<String>> needs(int below, int not, int most) {
        var needs = new ArrayList<List<String>>();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            int from = random.nextInt(12) == 0 ? size : below;
            var any = some(from, 1 + random.nextInt(3), not);
            if (!any.isEmpty()) {
                needs.add(any);
            }
        }
        return needs;
    }

    private List<String> some(int below, int count, int not) {
        var some = new TreeSet<String>();
        for (int i = 0; i < count && below > 0; i++) {
            int number = random.nextInt(below);
            if (number != not) {
                some.add(name(number));
            }
        }
        return List.copyOf(some);
    }

    private List<String> closing(int rarity) {
        return random.nextInt(rarity) == 0 ? List.of("f" + random.nextInt(3)) : List.of();
    }

    private Target target(int number) {
        var options = new ArrayList<Option>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            var needs = random.nextInt(14) == 0 ? List.<List<String>>of() : needs(size, -1, 3);
            options.add(new Option("w" + i, random.nextInt(80), needs));
        }
        var before = number > 0 && random.nextInt(3) == 0 ? List.of("t" + random.nextInt(number)) : List.<String>of();
        return new Target("t" + number, options, before, closing(3));
    }

    /** The same machine with something open that can be open. */
    PlanProblem halfOpen(PlanProblem problem) throws PlanException {
        var net = new Net(problem.accesses());
        var open = new TreeSet<Integer>();
        for (int i = 0; i < 4; i++) {
            var next = new TreeSet<>(open);
            next.add(random.nextInt(size));
            if (net.opening(next, java.util.Set.of()).size() == next.size() && !Openings.hasFoes(net, next)) {
                open = next;
            }
        }
        return new PlanProblem(problem.accesses(), problem.targets(), problem.closings(),
                open.stream().map(net::id).toList(), problem.due());
    }
}
