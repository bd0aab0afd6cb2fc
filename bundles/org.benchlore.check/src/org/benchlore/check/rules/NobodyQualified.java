// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;
import java.util.Locale;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Qualification;

/** Somebody in the shop holds the qualification a work asks for. */
final class NobodyQualified extends NeighbourRule {

    NobodyQualified() {
        super(new About("nobody-qualified", Severity.WARNING,
                "Somebody in the shop holds the qualification a work asks for",
                "The work is sold and nobody may do it."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        var held = new HashSet<Qualification>();
        neighbours.shop().ifPresent(shop -> shop.getPeople().stream().filter(person -> person.getLeft() == null)
                .forEach(person -> held.addAll(person.getQualifications())));
        for (var work : subject.works()) {
            work.getQualifications().stream().filter(asked -> asked != Qualification.NONE && asked != Qualification.NOT_RECORDED
                    && !held.contains(asked)).forEach(asked -> findings.add(work, "Nobody in the shop holds '"
                            + asked.getLiteral().toLowerCase(Locale.ROOT).replace('_', ' ')
                            + "', which this work asks for: have it done outside, or write who holds it"));
        }
    }
}
