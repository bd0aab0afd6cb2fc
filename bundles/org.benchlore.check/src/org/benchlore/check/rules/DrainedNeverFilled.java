// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Access;
import org.benchlore.model.FluidWay;
import org.benchlore.model.Procedure;
import org.benchlore.model.Work;

/** What is drained is filled again. */
final class DrainedNeverFilled extends NeighbourRule {

    DrainedNeverFilled() {
        super(new About("drained-never-filled", Severity.ERROR,
                "What is drained is filled again",
                "The machine is handed back dry.",
                "Compares which supply goes out and in, not how much."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var access : subject.all(Access.class)) {
            if (access.getStrip() != null) {
                var after = new ArrayList<Work>();
                Optional.ofNullable(access.getRefit()).ifPresent(after::add);
                new Following(neighbours).afterAccess(access).forEach(one -> neighbours.follow(one, Procedure.class)
                        .ifPresent(next -> after.addAll(Following.works(next))));
                report(access.getStrip(), after, neighbours, findings);
            }
        }
        subject.procedure().ifPresent(procedure -> {
            var after = new ArrayList<Work>(Following.works(procedure));
            new Following(neighbours).of(procedure).forEach(next -> after.addAll(Following.works(next)));
            subject.works().forEach(work -> report(work, after, neighbours, findings));
        });
    }

    private static void report(Work work, List<Work> after, Neighbours neighbours, Findings findings) {
        for (var use : work.getSupplies()) {
            boolean isFilled = after.stream().flatMap(one -> one.getSupplies().stream()).anyMatch(in -> in.getWay() == FluidWay.IN
                    && neighbours.addressOf(in.getSupply()).equals(neighbours.addressOf(use.getSupply())));
            if (use.getWay() == FluidWay.OUT && !isFilled) {
                findings.add(use, "'" + neighbours.title(use.getSupply())
                        + "' is drained, but nothing fills it in again: add the filling "
                        + "under 'after closing'");
            }
        }
    }
}
