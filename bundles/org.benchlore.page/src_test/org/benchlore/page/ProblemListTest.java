// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.page.ProblemList.Line;
import org.junit.jupiter.api.Test;

/** What the rules found, as it is read; the problems are invented. */
class ProblemListTest {

    private static final Address PLUG = new Address("procedures/renew-oil.xmi", "plug");
    private static final Line ERROR = new Line("error", PLUG, "Renew the oil", "step 3, fastening drain plug",
            "No tightening torque is written: look it up", "fastening-without-torque", "");

    private static String text(List<Line> open, List<Line> silenced) {
        return new TextRenderer(200).render(new ProblemList("Problems", 7).page(open, silenced));
    }

    @Test
    void aProblemStandsUnderItsElementWithPlaceSentenceAndRule() {
        var text = text(List.of(ERROR), List.of());
        assertTrue(text.contains("Renew the oil"), text);
        assertTrue(text.contains("Error at step 3, fastening drain plug"), text);
        assertTrue(text.contains("No tightening torque is written: look it up. (fastening-without-torque)"), text);
    }

    @Test
    void thePlaceLeadsToTheElement() {
        var links = new ProblemList("Problems", 1).page(List.of(ERROR), List.of()).blocks().stream()
                .filter(Block.Bullets.class::isInstance).flatMap(block -> ((Block.Bullets) block).items().stream())
                .flatMap(List::stream).filter(Span.Link.class::isInstance).map(span -> ((Span.Link) span).target()).toList();
        assertEquals(List.of(PLUG), links);
    }

    @Test
    void whatIsSilencedIsCountedAndShownWithItsReason() {
        var silenced = new Line("warning", PLUG, "Renew the oil", "", "A remark", "some-rule", "So it is.");
        var text = text(List.of(), List.of(silenced));
        assertTrue(text.contains("0 errors, 0 warnings, 1 silenced with a reason in 7 files."), text);
        assertTrue(text.contains("Reason: So it is."), text);
    }
}
