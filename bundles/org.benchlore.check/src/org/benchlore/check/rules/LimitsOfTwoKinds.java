// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Measurement;

/** All limits of a measurement are of one kind of quantity. */
final class LimitsOfTwoKinds extends ElementRule {

    LimitsOfTwoKinds() {
        super(new About("limits-of-two-kinds", Severity.ERROR,
                "All limits of a measurement are of one kind of quantity",
                "Millimetres cannot be compared with bars."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var measurement : subject.all(Measurement.class)) {
            var values = new ArrayList<Quantity>();
            for (var value : new Quantity[] {measurement.getNominal(), measurement.getLow(), measurement.getHigh(),
                    measurement.getWearLimit()}) {
                if (value != null) {
                    values.add(value);
                }
            }
            values.stream().filter(value -> !value.unit().convertsTo(values.get(0).unit())).findFirst()
                    .ifPresent(other -> findings.add(measurement, "'" + Works.shorten(measurement.getWhat()) + "' mixes "
                            + values.get(0)
                            + " and " + other + ": write all in units of one kind"));
        }
    }
}
