// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;
import java.util.Set;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Machine;
import org.benchlore.model.Part;
import org.benchlore.model.PartUse;

/** A part fits a machine of the procedure that uses it. */
final class PartDoesNotFit extends NeighbourRule {

    PartDoesNotFit() {
        super(new About("part-does-not-fit", Severity.WARNING,
                "A part fits a machine of the procedure that uses it",
                "The part comes, and it is the one for the other lorry.",
                "Compares machines, not years or serial numbers. Parts for no named machine are passed over."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        var machines = new HashSet<String>();
        subject.procedure().ifPresent(procedure -> procedure.getApplicability()
                .forEach(one -> neighbours.addressOf(one.getMachine()).ifPresent(at -> machines.add(at.path()))));
        if (subject.top() instanceof Machine) {
            machines.add(subject.path());
        }
        if (machines.isEmpty()) {
            return;
        }
        for (var use : subject.all(PartUse.class)) {
            neighbours.follow(use.getPart(), Part.class).filter(part -> !fits(part, machines, neighbours)).ifPresent(part ->
                    findings.add(use, "'" + neighbours.title(use.getPart()) + "' is not for this machine: look the number up"));
        }
    }

    private static boolean fits(Part part, Set<String> machines, Neighbours neighbours) {
        return part.getApplicability().isEmpty() || part.getApplicability().stream()
                .anyMatch(one -> neighbours.addressOf(one.getMachine()).filter(at -> machines.contains(at.path())).isPresent());
    }
}
