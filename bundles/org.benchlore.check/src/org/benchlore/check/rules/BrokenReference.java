// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Kind;
import org.benchlore.model.Step;
import org.benchlore.model.compare.Words;

/** Every reference leads to something. */
final class BrokenReference extends NeighbourRule {

    BrokenReference() {
        super(new About("broken-reference", Severity.ERROR,
                "Every reference leads to something",
                "The tool, the part or the step that is meant cannot be found when it is needed."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var out : Outgoing.of(subject)) {
            var target = neighbours.addressOf(out.target());
            if (target.isPresent() && neighbours.facts().at(target.get()).isEmpty() && !target.get().path().equals(subject.path())) {
                findings.add(out.owner(), "The " + new Words().field(out.reference()) + " '" + target.get()
                        + "' does not exist: mend or remove "
                        + "the reference");
            }
        }
        for (var link : TextLink.of(subject)) {
            if (!exists(link, subject, neighbours)) {
                findings.add(link.owner(), "The text names {" + link.kind() + ":" + link.id()
                        + "}, which does not exist: mend or remove it");
            }
        }
    }

    private static boolean exists(TextLink link, Subject subject, Neighbours neighbours) {
        if (link.kind().equals("step")) {
            return subject.all(Step.class).stream().anyMatch(step -> link.id().equals(step.getId()));
        }
        return Kind.of(link.kind()).map(kind -> neighbours.facts().byId(link.id()).filter(row -> row.kind() == kind)
                .isPresent()).orElse(true);
    }
}
