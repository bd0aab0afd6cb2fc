// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.benchlore.model.Address;
import org.benchlore.model.Signal;
import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Numbered;
import org.benchlore.page.Block.Pair;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.Block.Table;
import org.benchlore.page.Block.Tone;
import org.junit.jupiter.api.Test;

/** Plain text for a terminal. */
class TextRendererTest {

    private static String render(int width, Block... blocks) {
        return new TextRenderer(width).render(new Page("Title", List.of(blocks)));
    }

    private static Span link(String text, String path, String id) {
        return new Span.Link(text, new Address(path, id));
    }

    @Test
    void aHazardIsBoxedWithItsSignalWordAndTouchesItsStep() {
        assertEquals("""
                +-- DANGER ----------------------------+
                | Crushing                             |
                | The lorry can come down and kill     |
                | Chock the wheels. Never go under it  |
                | alone.                               |
                +--------------------------------------+
                7.  Raise the lorry.""", render(40,
                new HazardPanel(Signal.DANGER, "Crushing", "The lorry can come down and kill",
                        "Chock the wheels. Never go under it alone."),
                new Numbered("7", "", Spans.of("Raise the lorry."), false)));
    }

    @Test
    void aLinkShowsTheIdToShow() {
        assertEquals("Use Press [spring-press].", render(60,
                new Paragraph(List.of(Span.of("Use "), link("Press", "tools/spring-press.xmi", "spring-press"),
                        Span.of(".")))));
    }

    @Test
    void whatLiesWithinAFileNamesTheFileOnce() {
        assertEquals("Cylinder [lifter], Seal, Lifter [lifter]", render(60, new Paragraph(List.of(
                link("Cylinder", "machines/lifter.xmi", "cylinder"), Span.of(", "),
                link("Seal", "machines/lifter.xmi", "seal"), Span.of(", "),
                link("Lifter", "machines/lifter.xmi", "lifter")))));
    }

    @Test
    void labelsStandInAColumn() {
        assertEquals("""
                Kind:    renew
                Machine: a long name that
                         is wrapped""", render(27, new Pairs(List.of(new Pair("Kind", Spans.of("renew")),
                new Pair("Machine", Spans.of("a long name that is wrapped"))))));
    }

    @Test
    void aTableIsAlignedAndItsWidestColumnIsWrapped() {
        assertEquals("""
                Tools:
                Tool                   Set to
                ---------------------  -------
                Torque wrench for      180 N·m
                small bolts
                Press""", render(30, new Table("Tools", List.of("Tool", "Set to"), List.of(
                List.of(Spans.of("Torque wrench for small bolts"), Spans.of("180 N·m")),
                List.of(Spans.of("Press"), List.of())))));
    }

    @Test
    void aTableThatDoesNotFitBecomesAListAndNoIdIsCut() {
        assertEquals("""
                Parts:
                - Part: Seal
                  [pto-output-seal]
                  Number: KT-40-2240-B
                  Price: 19.70 EUR""", render(25, new Table("Parts", List.of("Part", "Number", "Price"),
                List.of(List.of(List.of(link("Seal", "parts/pto-output-seal.xmi", "pto-output-seal")),
                        Spans.of("KT-40-2240-B"), Spans.of("19.70 EUR"))))));
    }

    @Test
    void whatBelongsToAStepIsSetInBelowIt() {
        assertEquals("""
                12. Measure: Measure the play.
                    Signed: ____________ Date: ____________
                    Why: It grows.
                    - at most 0.5 mm""", render(60,
                new Numbered("12", "Measure", Spans.of("Measure the play."), true),
                new Paragraph(List.of(Span.strong("Why: "), Span.of("It grows."))),
                new Bullets(List.of(Spans.of("at most 0.5 mm")))));
    }

    @Test
    void aTreeIsSetInByItsLevels() {
        assertEquals("- System\n  - Part\n    - Seal", render(40, new Bullets(List.of(Spans.of("System"),
                Indent.by(1, Spans.of("Part")), Indent.by(2, Spans.of("Seal"))))));
    }

    @Test
    void bannersCannotBeOverlooked() {
        assertEquals("*** STOP: Withdrawn.", render(40, new Banner(Tone.STOP, "Withdrawn.")));
    }

    @Test
    void aPictureIsNamed() {
        assertEquals("[picture pack.png: The pack]", render(40, new Picture("pack.png", "The pack")));
    }

    @Test
    void lineBreaksOfATextAreKept() {
        assertEquals("one\n\ntwo", render(40, new Paragraph(Spans.of("one\n\ntwo"))));
    }

    @Test
    void charactersThatSteerATerminalAreLeftOut() {
        assertEquals("red and turned", render(40, new Paragraph(Spans.of("\u009bred \u202eand\u0007 turned"))));
    }

    @Test
    void aFigureIsNotPartedFromItsUnit() {
        assertEquals("Tighten the hub nut to\n180 N·m and stop", render(26, new Paragraph(
                Spans.of("Tighten the hub nut to 180 N·m and stop"))));
    }
}
