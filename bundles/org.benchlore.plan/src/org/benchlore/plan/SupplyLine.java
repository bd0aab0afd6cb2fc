// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Supply;

/**
 * A supply of a plan.
 *
 * @param id its id
 * @param supply the supply, empty if the library does not hold it
 * @param quantities how much in all; more than one where units cannot be added; empty where none is written down
 * @param price share of the pack's price, empty where it cannot be worked out
 * @param isOut whether it comes out of the machine instead
 */
public record SupplyLine(String id, Optional<Supply> supply, List<Quantity> quantities, Optional<BigDecimal> price,
        boolean isOut) {
}
