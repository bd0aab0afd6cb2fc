// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Measurement;
import org.benchlore.model.Tool;

/** The tool of a measurement reaches its limits. */
final class GaugeOutOfRange extends NeighbourRule {

    GaugeOutOfRange() {
        super(new About("gauge-out-of-range", Severity.ERROR,
                "The tool of a measurement reaches its limits",
                "The needle stands at its stop and is read as a value.",
                "A lower limit is not compared: most are zero."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var measurement : subject.all(Measurement.class)) {
            neighbours.follow(measurement.getTool(), Tool.class).flatMap(tool -> outside(measurement, tool)).ifPresent(value ->
                    findings.add(measurement, value + " of '" + Works.shorten(measurement.getWhat()) + "' lies outside the range of '"
                            + neighbours.title(measurement.getTool()) + "': name a tool that reaches it"));
        }
    }

    private static Optional<Quantity> outside(Measurement measurement, Tool tool) {
        return Stream.of(Optional.ofNullable(measurement.getHigh()), Optional.ofNullable(measurement.getNominal()),
                Optional.ofNullable(measurement.getWearLimit())).flatMap(Optional::stream)
                        .filter(value -> isBeyond(value, tool)).findFirst();
    }

    private static boolean isBeyond(Quantity value, Tool tool) {
        return isAbove(value, tool.getRangeTo()) || isAbove(tool.getRangeFrom(), value);
    }

    private static boolean isAbove(Quantity one, Quantity other) {
        return one != null && other != null && one.unit().convertsTo(other.unit()) && one.compareMagnitude(other) > 0;
    }
}
