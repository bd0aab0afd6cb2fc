// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Fastening;
import org.benchlore.model.RenewRule;
import org.benchlore.model.Work;

/** Bolts that are renewed stand in the parts list, as many as there are. */
final class RenewedFastenerNotListed extends NeighbourRule {

    RenewedFastenerNotListed() {
        super(new About("renewed-fastener-not-listed", Severity.ERROR,
                "Bolts that are renewed stand in the parts list, as many as there are",
                "The machine is open, the new bolts are not there, and the old ones go in again."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            var work = Works.work(fastening);
            if (fastening.getRenew() == RenewRule.RENEW && work != null) {
                check(fastening, work, neighbours, findings);
            }
        }
    }

    private static void check(Fastening fastening, Work work, Neighbours neighbours, Findings findings) {
        var part = neighbours.addressOf(fastening.getPart());
        if (part.isEmpty()) {
            findings.add(fastening, Works.name(fastening)
                    + " is renewed, but its part is not named: name it and put it into the parts");
            return;
        }
        int wanted = Works.count(fastening.getCount());
        var use = work.getParts().stream().filter(one -> neighbours.addressOf(one.getPart()).equals(part)).findFirst();
        if (use.isEmpty() && !Listed.parts(work, neighbours).contains(part.get().path())) {
            findings.add(fastening, "'" + neighbours.title(fastening.getPart())
                    + "' is renewed here, but the parts do not list it: add "
                    + wanted, "Add it to the parts", (session, element) -> Adding.part(session, element, part.get(), wanted));
        } else if (use.isPresent() && Works.count(use.get().getQuantity()) < wanted) {
            findings.add(use.get(), "The parts list " + Works.count(use.get().getQuantity()) + " of '"
                    + neighbours.title(fastening.getPart())
                    + "', and " + wanted + " are renewed: list " + wanted, "List " + wanted, (session, element) ->
                            session.edits().value(element, Literals.PART_USE__QUANTITY, wanted));
        }
    }
}
