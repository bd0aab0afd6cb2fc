// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sat4j.specs.TimeoutException;

/** The search against Sat4j's pseudo-Boolean optimiser, an independent program: 200 machines of up to 60 accesses. */
class AgainstOptimiserTest {

    private static final int EACH = 50;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void theCheapestPlanCostsTheSame(int block) throws PlanException, TimeoutException {
        int planned = 0;
        for (int i = 0; i < EACH; i++) {
            long seed = 500_000L + 1_000L * block + i;
            var machine = new RandomMachine(seed, 13 + i % 48, 3);
            var problem = block % 2 == 0 ? machine.problem() : machine.halfOpen(machine.problem());
            var other = new ByPseudoBoolean(problem).cost();
            assertEquals(other, AgainstEveryMoveTest.cost(problem), () -> "seed " + seed);
            planned += other.isPresent() ? 1 : 0;
        }
        assertTrue(planned > EACH / 2, planned + " of " + EACH + " machines had a plan");
    }
}
