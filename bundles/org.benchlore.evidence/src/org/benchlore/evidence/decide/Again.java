// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;

/**
 * What it costs if it must come apart again, in the shop's currency, each item 0 or more.
 *
 * @param labour labour of the later job, access and refit included
 * @param part the part
 * @param supplies fluids, gaskets and other supplies of the later job
 * @param finding finding out what it is
 * @param ruins what its failure ruins
 * @param standing what the unit's standing still costs
 * @param beside what a comeback costs beside the work itself
 */
public record Again(BigDecimal labour, BigDecimal part, BigDecimal supplies, BigDecimal finding, BigDecimal ruins,
        BigDecimal standing, BigDecimal beside) {

    /** Nothing of anything. */
    public static final Again NOTHING = new Again(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO,
            BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    /**
     * Checks the items.
     *
     * @throws IllegalArgumentException if one of them is below 0
     */
    public Again {
        for (var item : new BigDecimal[] {labour, part, supplies, finding, ruins, standing, beside}) {
            Sum.check(item);
        }
    }

    /**
     * Adds them up.
     *
     * @return the sum
     */
    public BigDecimal total() {
        return labour.add(part).add(supplies).add(finding).add(ruins).add(standing).add(beside);
    }

    /**
     * Adds what its failure ruins.
     *
     * @param amount a further amount
     * @return all with it
     */
    public Again ruining(BigDecimal amount) {
        return new Again(labour, part, supplies, finding, ruins.add(amount), standing, beside);
    }

    /**
     * Adds what a comeback costs beside the work.
     *
     * @param amount a further amount
     * @return all with it
     */
    public Again beside(BigDecimal amount) {
        return new Again(labour, part, supplies, finding, ruins, standing, beside.add(amount));
    }

    /**
     * Adds supplies.
     *
     * @param amount a further amount
     * @return all with them
     */
    public Again supplied(BigDecimal amount) {
        return new Again(labour, part, supplies.add(amount), finding, ruins, standing, beside);
    }
}
