// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.model.Hazard;
import org.benchlore.model.Signal;
import org.benchlore.model.Supply;
import org.benchlore.model.Work;

/** The grave hazards of a supply stand where it is used. */
final class SupplyHazardMissing extends NeighbourRule {

    SupplyHazardMissing() {
        super(new About("supply-hazard-missing", Severity.WARNING,
                "The grave hazards of a supply stand where it is used",
                "The tin warns of fire, the step does not.",
                "Asks for WARNING and DANGER only, and compares the first word of the kind of hazard."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var work : subject.works()) {
            for (var use : work.getSupplies()) {
                neighbours.follow(use.getSupply(), Supply.class).ifPresent(supply -> supply.getHazards().stream()
                        .filter(hazard -> isGrave(hazard) && !isTold(subject, work, hazard)).findFirst()
                        .ifPresent(hazard -> findings.add(use, "'" + neighbours.title(use.getSupply()) + "' brings the hazard '"
                                + Works.shorten(hazard.getKind()) + "', which does not stand in this work: add it where it is used")));
            }
        }
    }

    private static boolean isGrave(Hazard hazard) {
        return hazard.getSignal() == Signal.DANGER || hazard.getSignal() == Signal.WARNING;
    }

    private static boolean isTold(Subject subject, Work work, Hazard wanted) {
        var first = Phrases.exactly(Works.plain(wanted.getKind()).split("[ ,;]")[0]);
        return Works.hazards(work).anyMatch(hazard -> first.isIn(subject.text(hazard)));
    }
}
