// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.List;

/**
 * One visit against a visit for each procedure, each from the closed machine; where the machine stands open, the first of them
 * from there.
 *
 * @param alone each procedure with what it takes alone
 * @param minutes time of all visits together
 * @param total price of all visits together, with tax
 * @param savedMinutes usual minutes that one visit saves
 * @param savedMoney what one visit saves the customer, with tax
 */
public record Visits(List<Alone> alone, Minutes minutes, BigDecimal total, long savedMinutes, BigDecimal savedMoney) {

    /**
     * A procedure in a visit of its own.
     *
     * @param id its id
     * @param title its title
     * @param minutes its time
     * @param total its price with tax
     * @param isFromNow whether it begins with the machine as it stands, which is not closed
     */
    public record Alone(String id, String title, Minutes minutes, BigDecimal total, boolean isFromNow) {
    }

    static Visits of(List<Plan> plans, Plan merged) {
        var alone = plans.stream().map(plan -> new Alone(plan.procedures().get(0).getId(),
                Titles.of(plan.procedures().get(0)), plan.times().minutes(), plan.price().total(),
                !plan.request().isFromClosed())).toList();
        var minutes = plans.stream().map(plan -> plan.times().minutes()).reduce(Minutes.NONE, Minutes::plus);
        var total = plans.stream().map(plan -> plan.price().total()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Visits(alone, minutes, total, minutes.usual() - merged.times().minutes().usual(),
                total.subtract(merged.price().total()));
    }
}
