// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against brute force over single moves, an independent reading of the package's text: 2,000 machines. */
class AgainstEveryMoveTest {

    private static final int EACH = 250;

    static OptionalLong cost(PlanProblem problem) {
        try {
            var solution = new PlanSearch(1_000_000).solve(problem);
            assertTrue(solution.isExact(), () -> "cut off: " + problem);
            return OptionalLong.of(solution.cost());
        } catch (PlanException e) {
            return OptionalLong.empty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void theCheapestPlanCostsTheSame(int block) throws PlanException {
        int planned = 0;
        for (int i = 0; i < EACH; i++) {
            long seed = 10_000L * block + i;
            var machine = new RandomMachine(seed, 3 + i % 10, block < 4 ? 3 : 4);
            var problem = block % 2 == 0 ? machine.problem() : machine.halfOpen(machine.problem());
            var brute = new EveryMove(problem).cost();
            assertEquals(brute, cost(problem), () -> "seed " + seed + " " + problem);
            planned += brute.isPresent() ? 1 : 0;
        }
        assertTrue(planned > EACH / 2, planned + " of " + EACH + " machines had a plan");
    }
}
