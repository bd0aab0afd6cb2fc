// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Makes the customer's sum from what a note gives alone: this work while doing that. */
public final class Additions {

    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);
    private static final int DECIMALS = 2;

    private Additions() {
    }

    /**
     * Makes the sum: extra = its minutes and the part; again = the minutes alone and the part.
     *
     * @param extraMinutes minutes it takes while it is open
     * @param aloneMinutes minutes if it must come apart again for it
     * @param part price of the part
     * @param perHour price of an hour
     * @return the customer's sum, to two decimals
     * @throws IllegalArgumentException if anything is below 0
     */
    public static Sum sum(BigDecimal extraMinutes, BigDecimal aloneMinutes, BigDecimal part, BigDecimal perHour) {
        var nothing = BigDecimal.ZERO;
        return Sum.of(Payer.CUSTOMER, labour(extraMinutes, perHour).add(part),
                new Again(labour(aloneMinutes, perHour), part, nothing, nothing, nothing, nothing, nothing));
    }

    private static BigDecimal labour(BigDecimal minutes, BigDecimal perHour) {
        return minutes.multiply(perHour).divide(MINUTES, DECIMALS, RoundingMode.HALF_UP);
    }
}
