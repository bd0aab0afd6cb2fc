// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What one payer's money says. It is not advice: a person chooses that.
 *
 * @param sum the sum it was made for
 * @param costs what each way out comes to for a job, to two decimals; only ways that are open; empty if nothing is known
 * @param least the way that comes to least; leaving wins a tie
 * @param breakEven how often it would have to bring the unit back for renewing to pay; empty if it never can
 * @param pays whether renewing pays against leaving, on money alone
 * @param sure how sure it is that the chance lies on that side of the break-even, 0 to 1
 */
public record Verdict(Sum sum, Map<Option, BigDecimal> costs, Option least, OptionalDouble breakEven, boolean pays,
        double sure) {
}
