// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What one payer pays now and what again, in the shop's currency.
 *
 * @param payer whose money it is
 * @param extra extra if done now: labour and part
 * @param again what it costs if it must come apart again
 * @param cap what the unit is worth: nobody loses more by a repair than the unit itself
 * @param test what the test costs, if there is one
 * @param standingPerDay what a day of waiting costs
 * @param holding what it costs to have the part on the shelf for nothing
 */
public record Sum(Payer payer, BigDecimal extra, Again again, Optional<BigDecimal> cap, BigDecimal test,
        BigDecimal standingPerDay, BigDecimal holding) {

    /**
     * Checks the amounts.
     *
     * @throws IllegalArgumentException if one of them is below 0
     */
    public Sum {
        check(extra);
        check(test);
        check(standingPerDay);
        check(holding);
        cap.ifPresent(Sum::check);
    }

    /**
     * Makes a sum of what is paid now and again, and nothing else.
     *
     * @param payer whose money it is
     * @param extra extra if done now
     * @param again if it must come apart again
     * @return the sum
     */
    public static Sum of(Payer payer, BigDecimal extra, Again again) {
        return new Sum(payer, extra, again, Optional.empty(), BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
    }

    /**
     * Returns what it costs if it must come apart again, but not more than the unit is worth.
     *
     * @return an amount
     */
    public BigDecimal apartLater() {
        var total = again.total();
        return cap.map(total::min).orElse(total);
    }

    /**
     * Caps it.
     *
     * @param value what the unit is worth
     * @return the same, capped
     */
    public Sum capped(BigDecimal value) {
        return new Sum(payer, extra, again, Optional.of(value), test, standingPerDay, holding);
    }

    /**
     * Adds what looking and waiting cost.
     *
     * @param testing what the test costs
     * @param perDay what a day of waiting costs
     * @param shelf what it costs to have the part on the shelf for nothing
     * @return the same with them
     */
    public Sum looking(BigDecimal testing, BigDecimal perDay, BigDecimal shelf) {
        return new Sum(payer, extra, again, cap, testing, perDay, shelf);
    }

    static void check(BigDecimal amount) {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("An amount cannot be below zero: " + amount);
        }
    }
}
