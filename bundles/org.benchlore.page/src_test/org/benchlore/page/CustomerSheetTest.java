// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

import javax.xml.parsers.DocumentBuilderFactory;

import org.benchlore.evidence.CountingRules;
import org.benchlore.evidence.Evidence;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.drawing.CostDrawing;
import org.benchlore.page.drawing.Shape;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.adding.Adder;
import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;
import org.benchlore.store.Library;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

/** The customer's sheet and the drawing of costs, over the demonstration library; all of it invented. */
class CustomerSheetTest {

    private static final Pattern STATISTICS = Pattern.compile("\\b(probabilit|prior|posterior|expected|distribution|interval|"
            + "confidence|likelihood|estimate)", Pattern.CASE_INSENSITIVE);
    private static final int LINES_OF_A_PAGE = 62;

    @TempDir
    Path cache;

    private Library library;
    private Evidence evidence;
    private Adding adding;

    @BeforeEach
    void open() throws Exception {
        library = Library.open(Path.of(System.getProperty("benchlore.root"), "procedures"), cache, new NullProgressMonitor());
        evidence = Evidence.following(library);
        adding = new Adder(library, new Planner(library), evidence).adding(new PlanRequest("lorry-21",
                List.of("renew-pto-clutch-pack"), List.of(), List.of(), LocalDate.of(2026, 11, 25), Optional.empty()),
                OptionalInt.empty(), CountingRules.usual());
    }

    @AfterEach
    void close() {
        evidence.close();
        library.close();
    }

    private String text(SheetWords words) {
        return new TextRenderer(96).render(CustomerSheet.of(library, adding, words));
    }

    private String flat(SheetWords words) {
        return text(words).replaceAll("\\s+", " ");
    }

    /** Seen: the note's 3 of about 40, lorry 8 in 2025 which held and lorry 25 in 2026 which came apart again: 4 of about 42. */
    @Test
    void itSaysWhatIsDoneWhatItCostsAndWhatElseCouldBeDone() {
        var text = flat(SheetWords.none());
        assertTrue(text.contains("Price with tax: 2684.49 EUR"), text);
        assertTrue(text.contains("Valid until: 2026-12-25"), text);
        assertTrue(text.contains("404.16"), text);
        assertTrue(text.contains("back: about 1 in 11"), text);
        assertTrue(text.contains("Signature: "), text);
        assertTrue(text.contains("not for use on a real machine"), text);
    }

    @Test
    void itHoldsNoWordsOfStatisticsAndFitsOnAPage() {
        var text = text(new SheetWords(Optional.of("Take the actuator with it."), Optional.of("Plates worn."), Optional.empty(),
                List.of("renew-pto-pack-filter"), Optional.empty(), Optional.empty(), Optional.empty()));
        assertFalse(STATISTICS.matcher(text).find(), text);
        assertTrue(text.lines().count() <= LINES_OF_A_PAGE, () -> text.lines().count() + " lines");
    }

    @Test
    void theAdviceIsAPersonsAndNothingStandsThereByItself() {
        assertTrue(flat(SheetWords.none()).contains("What we advise, and why: ______"));
        assertTrue(flat(new SheetWords(Optional.of("Leave it."), Optional.empty(), Optional.empty(), List.of(), Optional.empty(),
                Optional.empty(), Optional.empty())).contains("What we advise, and why: Leave it."));
    }

    @Test
    void whatWasDeclinedIsNotOfferedAgainAndKeepsItsRisk() {
        var text = flat(new SheetWords(Optional.empty(), Optional.empty(), Optional.empty(), List.of("renew-pto-actuator"),
                Optional.empty(), Optional.empty(), Optional.empty()));
        var declined = text.substring(text.indexOf("Declined by you"));
        assertTrue(declined.contains("if it must come apart again 3131.00"), text);
        assertTrue(declined.contains("4 of about 42"), text);
        assertFalse(text.substring(0, text.indexOf("Declined by you")).contains("3131.00"), text);
    }

    @Test
    void whatPeoplePutInIsEscapedAndThePictureIsInTheFile() {
        var words = new SheetWords(Optional.of("<script>alert(1)</script>"), Optional.empty(), Optional.of(new Picture("given",
                "Step in the bore")), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
        var html = new HtmlRenderer(target -> Optional.empty(), file -> Optional.of("data:image/png;base64,AAAA"))
                .renderOnePage(CustomerSheet.of(library, adding, words));
        assertFalse(html.contains("<script>"), html);
        assertTrue(html.contains("src=\"data:image/png;base64,AAAA\""), html);
        assertTrue(html.contains("@page { size: A4"), html);
    }

    @Test
    void aSheetIsReadBackFromTextAndFromHtml() {
        var page = CustomerSheet.of(library, adding, SheetWords.none());
        var expected = Optional.of(new EarlierSheet(LocalDate.of(2026, 11, 25), "lorry-21", List.of("renew-pto-clutch-pack"),
                new BigDecimal("2684.49"), "EUR", LocalDate.of(2026, 11, 30)));
        assertEquals(expected, EarlierSheet.read(new TextRenderer(40).render(page)));
        assertEquals(expected, EarlierSheet.read(new HtmlRenderer().renderOnePage(page)));
        assertEquals(Optional.empty(), EarlierSheet.read("Our reference: none"));
    }

    @Test
    void aRevisedSheetSaysWhatChanged() {
        var first = new EarlierSheet(LocalDate.of(2026, 11, 20), "lorry-21", List.of("renew-pto-actuator"),
                new BigDecimal("2065.69"), "EUR", LocalDate.of(2026, 11, 27));
        var text = flat(new SheetWords(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.of(first),
                Optional.of(new BigDecimal("1022.96"))));
        assertTrue(text.contains("What changed against the sheet of 2026-11-20"), text);
        assertTrue(text.contains("Came in: Renew the clutch pack of the power take-off"), text);
        assertTrue(text.contains("Dropped: Renew the engagement actuator of the power take-off"), text);
        assertTrue(text.contains("2065.69 EUR then, 3088.65 EUR now"), text);
    }

    @Test
    void withoutAPlanThereIsNoSheet() {
        var none = new Adding(adding.request(), adding.machine(), adding.unit(), Optional.empty(), Optional.empty(), "", 80,
                List.of(), List.of(), Optional.empty(), List.of());
        assertThrows(IllegalArgumentException.class, () -> CustomerSheet.of(library, none, SheetWords.none()));
    }

    /** Pays from 0.1333, 1 in 8 (1 / 0.1333 = 7.5); known 1.75 of 12, the note's 0.75 of 10 and one of two jobs since: 0.1458, 1 in 7. */
    @Test
    void theDrawingSaysFromWhereItPaysInBlackAndWhite() throws Exception {
        var drawing = CostDrawing.of(adding.proposal("renew-pto-actuator").orElseThrow(), 80, "EUR");
        assertTrue(drawing.description().contains("from about 1 in 8 on renewing pays"), drawing.description());
        assertTrue(drawing.description().contains("Rings: about 1 in 7,"), drawing.description());
        var colours = Pattern.compile("#[0-9a-f]{6}").matcher(drawing.svg()).results().map(it -> it.group()).distinct().sorted();
        assertEquals(List.of("#000000", "#ffffff"), colours.toList());
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(drawing.svg())));
    }

    @Test
    void withNothingRecordedOrNothingToSaveItIsDrawnAllTheSame() {
        var one = adding.proposal("renew-pto-actuator").orElseThrow().with(Figure.LABOUR, BigDecimal.ZERO)
                .with(Figure.PARTS, BigDecimal.ZERO).with(Figure.SUPPLIES, BigDecimal.ZERO).with(Figure.FINDING, BigDecimal.ZERO)
                .with(Figure.RUINS, BigDecimal.ZERO);
        var drawing = CostDrawing.of(one, 80, "");
        assertTrue(drawing.description().contains("Renewing costs more, however often it fails"), drawing.description());
        assertFalse(drawing.svg().contains("NaN"), drawing.svg());
    }

    @Test
    void anotherDayUntilWhichPricesHoldStandsOnIt() {
        var text = flat(new SheetWords(Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
                Optional.of(LocalDate.of(2026, 12, 5)), Optional.empty(), Optional.empty()));
        assertTrue(text.contains("Valid until: 2026-12-05"), text);
    }

    /** The extra 404.16 now, of which a test at 40 that finds 90 of a hundred and blames 5 saves some where little fails. */
    @Test
    void everyWayOutThatIsOpenHasALineOfItsOwn() {
        var one = adding.proposal("renew-pto-actuator").orElseThrow();
        assertFalse(CostDrawing.of(one, 80, "EUR").description().contains("test it now"), "no test, no line");
        var drawing = CostDrawing.of(one.with(Figure.TEST, new BigDecimal("40")).with(Figure.TEST_FINDS, new BigDecimal("90"))
                .with(Figure.TEST_BLAMES, new BigDecimal("5")).with(Figure.EYE_FINDS, new BigDecimal("60")), 80, "EUR");
        for (var words : List.of("Heavy line: leave it", "thin line: renew it now", "Long dashes: test it now and decide",
                "dots: have it on the shelf and decide on sight")) {
            assertTrue(drawing.description().contains(words), drawing.description());
        }
        var rings = drawing.shapes().stream().filter(Shape.Ring.class::isInstance).count();
        assertEquals(4, rings);
    }

    @Test
    void wordsAtTheEndsOfLinesDoNotLieOnEachOther() {
        var one = adding.proposal("renew-pto-actuator").orElseThrow().with(Figure.TEST_FINDS, new BigDecimal("100"))
                .with(Figure.TEST_BLAMES, new BigDecimal("100")).with(Figure.EYE_FINDS, new BigDecimal("100"))
                .with(Figure.EYE_BLAMES, new BigDecimal("100"));
        var ends = List.of("leave it", "renew it now", "test and decide", "decide on sight");
        var places = CostDrawing.of(one, 80, "EUR").shapes().stream().filter(Shape.Label.class::isInstance)
                .map(Shape.Label.class::cast).filter(label -> ends.contains(label.text())).map(Shape.Label::y).sorted().toList();
        assertEquals(4, places.size());
        for (int i = 1; i < places.size(); i++) {
            assertTrue(places.get(i) - places.get(i - 1) >= 12, places::toString);
        }
    }
}
