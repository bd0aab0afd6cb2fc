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
import org.benchlore.model.Part;
import org.benchlore.model.PartUse;
import org.benchlore.model.Work;

/** Work uses parts and tools that are still delivered, and follows notes that still hold. */
final class SupersededReference extends NeighbourRule {

    SupersededReference() {
        super(new About("superseded-reference", Severity.WARNING,
                "Work uses parts and tools that are still delivered, and follows notes that still hold",
                "The old part is ordered, comes back, and the machine stands.",
                "Looks at parts that work uses; parts that merely fit a component may be old."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var use : subject.all(PartUse.class)) {
            neighbours.follow(use.getPart(), Part.class).filter(part -> part.getSupersededBy() != null)
                    .ifPresent(part -> report(use, part, neighbours, findings));
        }
        for (var fastening : subject.all(Fastening.class)) {
            neighbours.follow(fastening.getPart(), Part.class).filter(part -> part.getSupersededBy() != null).ifPresent(part ->
                    findings.add(fastening, "The part '" + neighbours.title(fastening.getPart())
                            + "' is superseded: name its successor"));
        }
    }

    private static void report(PartUse use, Part part, Neighbours neighbours, Findings findings) {
        var successor = neighbours.addressOf(part.getSupersededBy());
        findings.add(use, "The part '" + neighbours.title(use.getPart()) + "' is superseded: use '"
                + neighbours.title(part.getSupersededBy())
                + "'", "Use the successor", (session, element) ->
                        session.edits().reference(element, Literals.PART_USE__PART, successor));
    }
}
