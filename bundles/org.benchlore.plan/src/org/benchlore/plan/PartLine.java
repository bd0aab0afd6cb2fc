// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Part;

/**
 * A part of a plan.
 *
 * @param id its id
 * @param part the part, empty if the library does not hold it
 * @param quantity how many, those in kits of the plan taken off
 * @param inKits how many come in kits of the plan
 * @param isOnlyIfFound whether it is renewed only if found bad: ready on the shelf, not in the price
 * @param stock how many lie at the shop's sites
 * @param leadMinutes how long missing ones take to come, 0 if none is missing or it is not known
 * @param usedFor titles of the items that use it
 */
public record PartLine(String id, Optional<Part> part, int quantity, int inKits, boolean isOnlyIfFound,
        BigDecimal stock, long leadMinutes, List<String> usedFor) {

    /** Whether more are needed than lie on the shelf. */
    public boolean isMissing() {
        return stock.compareTo(BigDecimal.valueOf(quantity)) < 0;
    }
}
