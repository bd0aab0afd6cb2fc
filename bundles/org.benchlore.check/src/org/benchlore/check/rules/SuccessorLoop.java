// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Collections;
import java.util.HashSet;
import java.util.Set;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Procedure;
import org.benchlore.model.TopElement;
import org.eclipse.emf.ecore.EReference;

/** What replaces something is not replaced by it. */
final class SuccessorLoop extends NeighbourRule {

    SuccessorLoop() {
        super(new About("successor-loop", Severity.ERROR,
                "What replaces something is not replaced by it",
                "Whoever looks for the newest goes round in a ring."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        var top = subject.top();
        var feature = top.eClass().getEStructuralFeature(top instanceof Procedure ? "replacedBy" : "supersededBy");
        var seen = new HashSet<String>(Set.of(subject.path()));
        while (feature instanceof EReference && top != null && top.eGet(feature, false) instanceof TopElement next) {
            var at = neighbours.addressOf(next);
            if (at.isPresent() && !seen.add(at.get().path())) {
                if (at.get().path().equals(subject.path()) && Collections.min(seen).equals(subject.path())) {
                    findings.add(subject.top(), "By its successors this leads back to itself: take one of them away");
                }
                return;
            }
            top = neighbours.follow(next, TopElement.class).orElse(null);
        }
    }
}
