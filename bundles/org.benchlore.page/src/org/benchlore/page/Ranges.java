// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

import org.benchlore.model.Applicability;

/** Writes which machines something is for. */
final class Ranges {

    private final Links links;

    Ranges(Links links) {
        this.links = links;
    }

    void write(Sheet sheet, List<Applicability> applicability) {
        sheet.bullets(2, Texts.APPLIES_TO, applicability.stream().map(this::line).toList());
    }

    private List<Span> line(Applicability one) {
        return Spans.join("; ", List.of(links.to(one.getMachine()),
                Spans.before("only ", Spans.words(one.getVariants())),
                Spans.of("built ", Spans.range(one.getYearFrom(), one.getYearTo())),
                Spans.of("serial numbers ", Spans.range(one.getSerialFrom(), one.getSerialTo())),
                Spans.before("only with ", Spans.words(one.getOptions()))));
    }
}
