// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Optional;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Kind;
import org.benchlore.model.Status;
import org.benchlore.store.Row;

/** Nothing leads to a withdrawn procedure. */
final class WithdrawnReference extends NeighbourRule {

    WithdrawnReference() {
        super(new About("withdrawn-reference", Severity.ERROR,
                "Nothing leads to a withdrawn procedure",
                "It was withdrawn because following it does harm.",
                "Job records tell what was done and are passed over."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        if (subject.top() instanceof JobRecord || subject.procedure().filter(own -> own.getStatus() == Status.WITHDRAWN).isPresent()) {
            return;
        }
        for (var out : Outgoing.of(subject)) {
            if (out.reference().getEReferenceType() == Literals.PROCEDURE && isWithdrawn(neighbours.row(out.target()))) {
                findings.add(out.owner(), "'" + neighbours.title(out.target()) + "' is withdrawn: name what replaces it");
            }
        }
        for (var link : TextLink.of(subject)) {
            if (link.kind().equals(Kind.PROCEDURE.word()) && isWithdrawn(neighbours.facts().byId(link.id()))) {
                findings.add(link.owner(), "The text names {procedure:" + link.id() + "}, which is withdrawn: name what replaces it");
            }
        }
    }

    private static boolean isWithdrawn(Optional<Row> row) {
        return row.filter(found -> found.status().equals(Status.WITHDRAWN.getLiteral())).isPresent();
    }
}
