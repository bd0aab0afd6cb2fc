// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Measurement;

/** A measurement has a value to compare with. */
final class MeasurementWithoutLimits extends ElementRule {

    MeasurementWithoutLimits() {
        super(new About("measurement-without-limits", Severity.WARNING,
                "A measurement has a value to compare with",
                "The apprentice reads a figure and does not know whether it is good."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var measurement : subject.all(Measurement.class)) {
            if (measurement.getNominal() == null && measurement.getLow() == null && measurement.getHigh() == null
                    && measurement.getWearLimit() == null) {
                findings.add(measurement, "'" + Works.shorten(measurement.getWhat())
                        + "' has no limit and no nominal value: write one, or say "
                        + "in the step what the figure is for");
            }
        }
    }
}
