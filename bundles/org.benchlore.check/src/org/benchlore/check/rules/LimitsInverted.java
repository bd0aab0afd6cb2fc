// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.edit.Edits;
import org.benchlore.measure.Quantity;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Measurement;

/** The lower limit lies below the upper one and the nominal value between them. */
final class LimitsInverted extends ElementRule {

    LimitsInverted() {
        super(new About("limits-inverted", Severity.ERROR,
                "The lower limit lies below the upper one and the nominal value between them",
                "Every value is out of limits, or none."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var measurement : subject.all(Measurement.class)) {
            var low = measurement.getLow();
            var high = measurement.getHigh();
            var nominal = measurement.getNominal();
            var name = "'" + Works.shorten(measurement.getWhat()) + "'";
            if (isAbove(low, high)) {
                findings.add(measurement, "The limits of " + name + " are the wrong way round, " + low + " and " + high
                        + ": turn them round",
                        "Turn the limits round", (session, element) -> Edits.all("turn the limits round", List.of(
                                session.edits().value(element, Literals.MEASUREMENT__LOW, high),
                                session.edits().value(element, Literals.MEASUREMENT__HIGH, low))));
            } else if (isAbove(low, nominal) || isAbove(nominal, high)) {
                findings.add(measurement, "The nominal value of " + name + ", " + nominal
                        + ", lies outside its limits: look all three up");
            }
        }
    }

    private static boolean isAbove(Quantity one, Quantity other) {
        return one != null && other != null && one.unit().convertsTo(other.unit()) && one.compareMagnitude(other) > 0;
    }
}
