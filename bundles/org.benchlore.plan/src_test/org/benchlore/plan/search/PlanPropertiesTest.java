// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every plan, on 300 random machines. */
class PlanPropertiesTest {

    static List<Long> seeds() {
        return new Random(7).longs(300, 0, 1_000_000).boxed().toList();
    }

    private static Optional<Solution> plan(PlanProblem problem) {
        try {
            return Optional.of(new PlanSearch(1_000_000).solve(problem));
        } catch (PlanException e) {
            return Optional.empty();
        }
    }

    private static PlanProblem problem(long seed) throws PlanException {
        var machine = new RandomMachine(seed, 6 + (int) (seed % 7), 3);
        return seed % 2 == 0 ? machine.problem() : machine.halfOpen(machine.problem());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingIsDoneWhereItIsNotReachableAndEverythingOpenedCanBeClosed(long seed) throws PlanException {
        var problem = problem(seed);
        var reach = new Reach(problem);
        plan(problem).ifPresent(plan -> {
            var done = new ArrayList<String>(plan.anywhere().keySet());
            var before = new HashSet<>(problem.open());
            for (var sitting : plan.sittings()) {
                assertTrue(before.containsAll(sitting.kept()));
                var open = new HashSet<String>();
                for (var id : sitting.kept()) {
                    assertTrue(reach.canOpen(id, open), () -> id + " stays without what it needs");
                    open.add(id);
                }
                for (var id : sitting.opened()) {
                    assertTrue(reach.canOpen(id, open), () -> id + " is opened without what it needs");
                    open.add(id);
                }
                sitting.done().forEach((target, option) -> assertTrue(reach.isMet(needs(problem, target, option), open), target));
                done.addAll(sitting.done().keySet());
                before = open;
            }
            Collections.sort(done);
            assertEquals(problem.targets().stream().map(Target::id).toList(), done);
        });
    }

    private static List<List<String>> needs(PlanProblem problem, String target, String option) {
        return problem.targets().stream().filter(it -> it.id().equals(target)).flatMap(it -> it.options().stream())
                .filter(it -> it.id().equals(option)).findFirst().orElseThrow().needs();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void oneVisitIsNeverDearerThanSeparateVisits(long seed) throws PlanException {
        var problem = new RandomMachine(seed, 6 + (int) (seed % 7), 3).problem();
        plan(problem).ifPresent(plan -> assertTrue(plan.cost() <= problem.targets().stream()
                .mapToLong(target -> plan(problem.with(List.of(target))).orElseThrow().cost()).sum()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aFurtherTargetNeverLowersTheCost(long seed) throws PlanException {
        var problem = problem(seed);
        plan(problem).ifPresent(plan -> {
            for (var target : problem.targets()) {
                var fewer = problem.targets().stream().filter(it -> !it.equals(target)).toList();
                assertTrue(plan(problem.with(fewer)).orElseThrow().cost() <= plan.cost(), target.id());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfTheInputChangesNothing(long seed) throws PlanException {
        var problem = problem(seed);
        var random = new Random(seed);
        var accesses = new ArrayList<AccessNode>();
        problem.accesses().forEach(it -> accesses.add(new AccessNode(it.id(), it.strip(), it.refit(),
                shuffled(it.needs(), random), shuffled(it.covers(), random), it.notWith(), shuffled(it.closing(), random))));
        var targets = problem.targets().stream().map(it -> new Target(it.id(), shuffled(it.options(), random), it.before(),
                it.closing())).toList();
        var other = new PlanProblem(shuffled(accesses, random), shuffled(targets, random), shuffled(problem.closings(), random),
                shuffled(problem.open(), random), problem.due());
        assertEquals(plan(problem), plan(other));
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        var copy = new ArrayList<>(list);
        Collections.shuffle(copy, random);
        return copy;
    }
}
