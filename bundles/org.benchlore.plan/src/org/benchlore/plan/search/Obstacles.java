// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says why there is no plan, by the names of the elements. */
final class Obstacles {

    private final PlanProblem problem;
    private final Net net;
    private final Set<Integer> reachable;

    Obstacles(PlanProblem problem, Net net) throws PlanException {
        this.problem = problem;
        this.net = net;
        this.reachable = new HashSet<>(net.opening(IntStream.range(0, net.size())
                .filter(access -> !net.areFoes(access, access)).boxed().collect(Collectors.toSet()), Set.of()));
    }

    /** Checks that what is open can be open, that every target has a way within reach, and that none waits for itself. */
    void check() throws PlanException {
        checkOpen();
        checkOrder();
        for (var target : problem.targets()) {
            if (target.options().isEmpty()) {
                throw new PlanException("'" + target.id() + "' has no way written down; write one down, or its time for the"
                        + " whole job", List.of(target.id()));
            }
            boolean isReached = false;
            for (var option : target.options()) {
                isReached |= Net.isMet(net.openers(option.needs(), target.id()), reachable);
            }
            if (!isReached) {
                throw unreachable(target);
            }
        }
    }

    private void checkOpen() throws PlanException {
        var open = Openings.numbers(net, problem.open());
        if (net.opening(open, Set.of()).size() < open.size()) {
            throw new PlanException("What is said to be open (" + String.join(", ", problem.open()) + ") cannot be open by"
                    + " itself; name what must be open for it as well", problem.open());
        }
        for (int one : open) {
            for (int other : open) {
                if (net.areFoes(one, other)) {
                    throw new PlanException("'" + net.id(one) + "' and '" + net.id(other) + "' must not be open at the same"
                            + " time; look at the machine again", List.of(net.id(one), net.id(other)));
                }
            }
        }
    }

    private void checkOrder() throws PlanException {
        var isBefore = Openings.order(problem.targets());
        var waiting = IntStream.range(0, problem.targets().size()).filter(target -> isBefore[target][target])
                .mapToObj(target -> problem.targets().get(target).id()).toList();
        if (!waiting.isEmpty()) {
            throw new PlanException("These must come before each other: " + String.join(", ", waiting) + "; take one"
                    + " 'before' out", waiting);
        }
    }

    private PlanException unreachable(Target target) throws PlanException {
        var path = new LinkedHashSet<String>();
        for (var option : target.options()) {
            for (var need : net.openers(option.needs(), target.id())) {
                if (Arrays.stream(need).noneMatch(reachable::contains)) {
                    return follow(target, need, path);
                }
            }
        }
        return unknown(problem);
    }

    /** Walks from a need that cannot be met to the circle or the dead end behind it. */
    private PlanException follow(Target target, int[] need, Set<String> path) throws PlanException {
        int[] next = need;
        while (next.length > 0) {
            int access = next[0];
            if (net.areFoes(access, access)) {
                return new PlanException("'" + target.id() + "' cannot be reached: '" + net.id(access) + "' is not with itself"
                        + " or with what it covers; correct the machine", List.of(target.id(), net.id(access)));
            }
            if (!path.add(net.id(access))) {
                var circle = new ArrayList<>(path).subList(new ArrayList<>(path).indexOf(net.id(access)), path.size());
                return new PlanException("'" + target.id() + "' cannot be reached: these accesses need each other: "
                        + String.join(" needs ", circle) + " needs " + net.id(access) + "; take one need out", circle);
            }
            next = dead(access);
        }
        var last = new ArrayList<>(path);
        return new PlanException("'" + target.id() + "' cannot be reached: "
                + (last.isEmpty() ? "one of its needs" : "a need of '" + last.get(last.size() - 1) + "'")
                + " names no access; write down which one", last.isEmpty() ? List.of(target.id()) : last);
    }

    private int[] dead(int access) throws PlanException {
        return net.needs(access).stream().filter(need -> Arrays.stream(need).noneMatch(reachable::contains)).findFirst()
                .orElse(new int[0]);
    }

    /** Why a target alone cannot be done: what it needs must not be open together. */
    PlanException foes(Target target) throws PlanException {
        var needs = new ArrayList<int[]>();
        for (var option : target.options()) {
            needs.addAll(net.openers(option.needs(), target.id()));
        }
        return new PlanException("'" + target.id() + "' cannot be reached while these must not be open at the same time: "
                + String.join("; ", pairs(net.relevant(needs, Set.of()))) + "; write down another way", List.of(target.id()));
    }

    private List<String> pairs(Set<Integer> accesses) {
        var found = new ArrayList<String>();
        for (int one : accesses) {
            for (int other : accesses) {
                if (one < other && net.areFoes(one, other)) {
                    found.add(net.id(one) + " and " + net.id(other));
                }
            }
        }
        return found;
    }

    static PlanException cutOff(PlanProblem problem) {
        var ids = problem.targets().stream().map(Target::id).toList();
        return new PlanException("The search for " + String.join(", ", ids) + " was cut off before it found a plan; plan fewer"
                + " procedures at a time", ids);
    }

    static PlanException unknown(PlanProblem problem) {
        var circle = closingCircle(problem);
        if (!circle.isEmpty()) {
            return new PlanException("These ask for each other after closing: " + String.join(", ", circle)
                    + "; take one 'after closing' or 'before' out", circle);
        }
        var ids = problem.targets().stream().map(Target::id).toList();
        return new PlanException("No plan was found for " + String.join(", ", ids)
                + "; look at the needs of its ways and accesses", ids);
    }

    /** Closing works that ask for themselves by way of others. */
    private static List<String> closingCircle(PlanProblem problem) {
        var asks = new TreeMap<String, List<String>>();
        problem.closings().forEach(closing -> asks.put(closing.id(), closing.closing()));
        return asks.keySet().stream().filter(id -> reached(id, asks).contains(id)).toList();
    }

    private static Set<String> reached(String from, Map<String, List<String>> asks) {
        var found = new LinkedHashSet<String>();
        var next = new ArrayDeque<>(asks.getOrDefault(from, List.of()));
        while (!next.isEmpty()) {
            var id = next.pop();
            if (found.add(id)) {
                next.addAll(asks.getOrDefault(id, List.of()));
            }
        }
        return found;
    }
}
