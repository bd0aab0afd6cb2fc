// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Kind;
import org.benchlore.model.SupplyUse;
import org.benchlore.store.Row;

/** A supply that a step needs stands in the supplies list. */
final class SupplyNotListed extends NeighbourRule {

    SupplyNotListed() {
        super(new About("supply-not-listed", Severity.WARNING,
                "A supply that a step needs stands in the supplies list",
                "The work stops for a tin of grease."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var work : subject.works()) {
            var listed = Listed.paths(work.getSupplies().stream().map(SupplyUse::getSupply).filter(one -> one != null)
                    .toList(), neighbours);
            for (var step : work.getSteps()) {
                Listed.named(subject, step, Kind.SUPPLY).stream().filter(supply -> !listed.contains(supply.path()))
                        .forEach(supply -> findings.add(step,
                        "The step needs '" + neighbours.facts().byId(supply.id()).map(Row::title).orElse(supply.id())
                                + "', but the supplies do not list it: add it with how much", "Add it to the supplies",
                        (session, element) -> Adding.supply(session, element, supply)));
            }
        }
    }
}
