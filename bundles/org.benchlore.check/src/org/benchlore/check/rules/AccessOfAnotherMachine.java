// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Applicability;
import org.benchlore.model.Need;

/** The accesses a way needs are those of its machine. */
final class AccessOfAnotherMachine extends NeighbourRule {

    AccessOfAnotherMachine() {
        super(new About("access-of-another-machine", Severity.ERROR,
                "The accesses a way needs are those of its machine",
                "The plan opens what the machine does not have."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        var machines = new HashSet<String>();
        subject.all(Applicability.class).forEach(one -> neighbours.addressOf(one.getMachine())
                .ifPresent(at -> machines.add(at.path())));
        if (subject.procedure().isEmpty() || machines.isEmpty()) {
            return;
        }
        for (var need : subject.all(Need.class)) {
            need.getAnyOf().stream().filter(access -> neighbours.addressOf(access)
                    .filter(at -> !machines.contains(at.path())).isPresent())
                    .forEach(access -> findings.add(need, "The way needs an access of '" + neighbours.title(access)
                            + "', for which the procedure is not: name one of its own machine"));
        }
    }
}
