// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Set;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Address;
import org.benchlore.model.Suppression;

/** A silenced rule has a reason, and the element is still there. */
final class SuppressionUnfounded extends NeighbourRule {

    private final Set<String> known;

    SuppressionUnfounded(Set<String> known) {
        super(new About("suppression-unfounded", Severity.WARNING,
                "A silenced rule has a reason, and the element is still there",
                "What is silenced for no reason, or for nothing, hides the next problem."));
        this.known = known;
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var suppression : subject.all(Suppression.class)) {
            if (Works.isBlank(suppression.getReason())) {
                findings.add(suppression, "The rule '" + suppression.getRule()
                        + "' is silenced without a reason: write it, or let the rule speak");
            } else if (!known.contains(suppression.getRule())) {
                findings.add(suppression, "There is no rule '" + suppression.getRule() + "': remove what silences it");
            } else if (!exists(suppression.getAddress(), neighbours)) {
                findings.add(suppression, "'" + suppression.getAddress() + "' does not exist any more: remove what silences it");
            }
        }
    }

    private static boolean exists(String address, Neighbours neighbours) {
        try {
            return neighbours.facts().at(Address.parse(Works.plain(address))).isPresent();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
