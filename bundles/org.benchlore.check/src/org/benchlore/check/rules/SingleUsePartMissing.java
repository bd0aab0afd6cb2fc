// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.YesNo;

/** A single-use part that a step names stands in the parts list. */
final class SingleUsePartMissing extends NeighbourRule {

    SingleUsePartMissing() {
        super(new About("single-use-part-missing", Severity.ERROR,
                "A single-use part that a step names stands in the parts list",
                "The old gasket goes in again and leaks.",
                "Sees parts named as links in the text. A kit in the same work counts; a kit of another work "
                        + "does not."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var work : subject.works()) {
            var listed = Listed.parts(work, neighbours);
            for (var step : work.getSteps()) {
                Listed.named(subject, step, Kind.PART).stream()
                        .filter(part -> !listed.contains(part.path()) && isSingleUse(part, neighbours))
                        .forEach(part -> findings.add(step, "The step fits '" + title(part, neighbours)
                                + "', which is never used twice, but the "
                                + "parts do not list it: add it", "Add it to the parts",
                                (session, element) -> Adding.part(session, element, part, 1)));
            }
        }
    }

    private static boolean isSingleUse(Address part, Neighbours neighbours) {
        return neighbours.element(part).filter(Part.class::isInstance).map(Part.class::cast)
                .filter(one -> one.getSingleUse() == YesNo.YES).isPresent();
    }

    private static String title(Address part, Neighbours neighbours) {
        return neighbours.facts().byId(part.id()).map(row -> row.title()).orElse(part.id());
    }
}
