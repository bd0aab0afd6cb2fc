// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.page.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.benchlore.model.Address;
import org.benchlore.model.Signal;
import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageWriterTest {

    private static final Address PART = new Address("parts/seal.xmi", "seal");
    private static final int WIDTH = 600;

    private static PageText write(Block... blocks) {
        return new PageWriter(new FixedRuler(WIDTH)).write(new Page("Title", List.of(blocks)));
    }

    private static String words(PageText page, PageText.LinkPlace link) {
        return page.text().substring(link.start(), link.start() + link.length());
    }

    @Test
    void linkKnowsItsPlaceAndTarget() {
        var page = write(new Block.Heading(1, "Title"),
                new Block.Paragraph(List.of(Span.of("Take a "), new Span.Link("new seal", PART), Span.of("."))));
        assertEquals("Title\nTake a new seal.\n", page.text());
        assertEquals("new seal", words(page, page.links().get(0)));
        assertEquals(PART, page.linkAt(page.text().indexOf("new")).orElseThrow().target());
        assertTrue(page.linkAt(page.text().indexOf("Take")).isEmpty());
    }

    @Test
    void runsCoverEverythingButLineFeedsAndTabs() {
        var page = write(new Block.Heading(2, "Parts"), new Block.Pairs(List.of(new Block.Pair("Number",
                List.of(Span.of("KT 1\nKT 2"))))), new Block.Bullets(List.of(List.of(Span.strong("one")))));
        var covered = new StringBuilder();
        page.runs().forEach(run -> covered.append(page.text(), run.start(), run.start() + run.length()));
        assertEquals(page.text().replaceAll("[\\n\\t]", ""), covered.toString());
    }

    @Test
    void everyLineHasALook() {
        var page = write(new Block.Paragraph(List.of(Span.of("one\ntwo"))),
                new Block.Banner(Block.Tone.INVENTED, "Invented"));
        assertEquals(page.text().split("\n", -1).length, page.lines().size());
    }

    // Signal words on their colours, the sign on all but NOTICE: ANSI Z535.6 and ISO 3864-2, from memory.
    @ParameterizedTest
    @CsvSource({"DANGER, DANGER, true", "WARNING, WARNING, true", "CAUTION, CAUTION, true", "NOTICE, NOTICE, false",
        "NOT_RECORDED, NOTICE, false"})
    void hazardPanelCarriesItsSignalWord(Signal signal, Fill fill, boolean sign) {
        var page = write(new Block.HazardPanel(signal, "Crushing", "A hand is crushed", "Prop it up"));
        assertEquals(fill, page.lines().get(0).fill());
        assertEquals(sign, page.text().startsWith("⚠ " + signal));
        assertEquals(List.of(new PageText.Panel(0, 2)), page.panels());
        assertEquals(Fill.HAZARD_WORDS, page.lines().get(2).fill());
    }

    @Test
    void hazardStandsAboveItsStep() {
        var page = write(new Block.HazardPanel(Signal.WARNING, "Oil", "Oil injures", "Use a card"),
                new Block.Numbered("3", "", List.of(Span.of("Open the union")), true));
        assertTrue(page.text().indexOf("WARNING") < page.text().indexOf("Open the union"));
    }

    @Test
    void wrappedWordsOfAStepStandUnderItsWords() {
        var line = write(new Block.Numbered("3", "Measure", List.of(Span.of("Travel")), false)).lines().get(0);
        assertEquals(line.wrapIndent(), line.indent() + line.tabs().get(0));
    }

    @Test
    void bulletsBehindAStepStandUnderItsWords() {
        var page = write(new Block.Numbered("3", "", List.of(Span.of("Look")), false),
                new Block.Bullets(List.of(List.of(Span.of("If worn")))));
        assertTrue(page.lines().get(1).indent() > page.lines().get(0).indent());
        assertFalse(page.lines().get(1).indent() < page.lines().get(0).wrapIndent());
    }

    @Test
    void pictureStandsForOneCharacter() {
        var page = write(new Block.Picture("bore.png", "The bore"));
        assertEquals(List.of(new PageText.PicturePlace(0, "bore.png", Optional.empty())), page.pictures());
        assertEquals("\uFFFC\nThe bore\n", page.text());
    }
}
