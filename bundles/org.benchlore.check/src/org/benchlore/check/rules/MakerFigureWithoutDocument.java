// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.Measurement;
import org.benchlore.model.Source;
import org.benchlore.model.StatedBy;

/** A figure of the maker names the document it stands in. */
final class MakerFigureWithoutDocument extends ElementRule {

    MakerFigureWithoutDocument() {
        super(new About("maker-figure-without-document", Severity.WARNING,
                "A figure of the maker names the document it stands in",
                "Nobody can look it up again, and nobody sees when a newer edition changes it."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            if (fastening.getStatedBy() == StatedBy.MAKER && isOpen(fastening.getSource())) {
                findings.add(fastening, "The torque of " + Works.name(fastening)
                        + " is the maker's, but no document is named: name it "
                        + "with its edition");
            }
        }
        for (var measurement : subject.all(Measurement.class)) {
            if (measurement.getStatedBy() == StatedBy.MAKER && isOpen(measurement.getSource())) {
                findings.add(measurement, "The limits of '" + Works.shorten(measurement.getWhat())
                        + "' are the maker's, but no document "
                        + "is named: name it with its edition");
            }
        }
    }

    private static boolean isOpen(Source source) {
        return source == null || source.getDocument() == null;
    }
}
