// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Measurement;

/** Writes what is to be measured and its limits. */
final class Measurements {

    private final Links links;

    Measurements(Links links) {
        this.links = links;
    }

    List<Span> line(Measurement measurement) {
        return Spans.join("; ", List.of(
                Spans.concat(Spans.of("Measure " + Names.of(measurement)), Spans.of(" at ", measurement.getPlace()),
                        List.of(Span.of(": "), Span.strong(limits(measurement)))),
                Spans.before("with ", links.to(measurement.getTool())),
                Spans.of(Stated.by("limits", measurement.getStatedBy())),
                Spans.before("source: ", links.cited(measurement.getSource()))));
    }

    /** Returns limits in words, 'limits not recorded' where there are none. */
    static String limits(Measurement measurement) {
        var words = Stream.of(before("nominal ", measurement.getNominal()), between(measurement),
                before("renew beyond ", measurement.getWearLimit())).filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return words.isEmpty() ? "limits " + Texts.NOT_RECORDED : words;
    }

    private static String between(Measurement measurement) {
        if (measurement.getLow() != null && measurement.getHigh() != null) {
            return Spans.range(measurement.getLow(), measurement.getHigh());
        }
        return measurement.getLow() == null ? before("at most ", measurement.getHigh())
                : before("at least ", measurement.getLow());
    }

    private static String before(String words, Object value) {
        return value == null ? "" : words + value;
    }
}
