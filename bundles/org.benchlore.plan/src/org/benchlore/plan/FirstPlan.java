// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What changed against the plan for the same procedures from the closed machine.
 *
 * @param minutes time of the first plan
 * @param total its price with tax
 * @param gone titles of what is not left to do
 * @param added titles of what has come in
 */
public record FirstPlan(Minutes minutes, BigDecimal total, List<String> gone, List<String> added) {

    static FirstPlan of(Plan first, Plan now) {
        var gone = titles(first);
        var added = titles(now);
        titles(now).forEach(gone::remove);
        titles(first).forEach(added::remove);
        return new FirstPlan(first.times().minutes(), first.price().total(), List.copyOf(gone), List.copyOf(added));
    }

    private static List<String> titles(Plan plan) {
        return new ArrayList<>(plan.items().stream().filter(item -> item.proof().isEmpty()).map(PlanItem::title).toList());
    }
}
