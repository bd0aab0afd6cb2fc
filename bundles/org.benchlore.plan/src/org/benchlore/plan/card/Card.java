// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.List;
import java.util.Optional;

import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanItem;

/**
 * What one round of a job is planned to be.
 *
 * @param plan the plan, from where the machine stood when the round began; empty if the round is planned for nothing
 * @param problem why there is no plan, in one sentence; empty if there is one or none was asked for
 */
public record Card(Optional<Plan> plan, Optional<String> problem) {

    /** The card of a round that is planned for nothing. */
    public static final Card NONE = new Card(Optional.empty(), Optional.empty());

    /**
     * Returns what is to be done.
     *
     * @return the items in order, none where there is no plan
     */
    public List<PlanItem> items() {
        return plan.map(Plan::items).orElse(List.of());
    }
}
