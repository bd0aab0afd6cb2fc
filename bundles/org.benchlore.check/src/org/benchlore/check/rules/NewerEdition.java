// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Document;
import org.benchlore.model.Source;

/** A procedure stands on the newest edition of its documents. */
final class NewerEdition extends NeighbourRule {

    NewerEdition() {
        super(new About("newer-edition", Severity.WARNING,
                "A procedure stands on the newest edition of its documents",
                "The maker has changed a figure, and the shop works by the old one."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var source : subject.all(Source.class)) {
            neighbours.follow(source.getDocument(), Document.class).ifPresent(document -> {
                if (document.getSupersededBy() != null) {
                    findings.add(source, "'" + neighbours.title(source.getDocument()) + "' was replaced by '"
                            + neighbours.title(document.getSupersededBy()) + "': read the new one and name it");
                } else if (source.getEdition() != null && document.getEdition() != null
                        && !source.getEdition().strip().equals(document.getEdition().strip())) {
                    findings.add(source, "Edition " + source.getEdition() + " of '" + neighbours.title(source.getDocument())
                            + "' was read, and edition " + document.getEdition() + " is here: read it and write its number");
                }
            });
        }
    }
}
