// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.benchlore.model.Address;
import org.benchlore.model.BookFactory;
import org.benchlore.model.Kind;
import org.benchlore.model.Signal;
import org.benchlore.model.TopElement;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** HTML that stands alone. */
class HtmlRendererTest {

    private static final Set<String> VOID = Set.of("meta", "br", "img", "!DOCTYPE");

    @TempDir
    Path folder;

    @Test
    void everySheetOfPaperSaysThatTheDataIsInvented() {
        var foot = "@bottom-left { content: \"" + Texts.INVENTED;
        assertTrue(render(new Block.Banner(Block.Tone.INVENTED, Texts.INVENTED)).contains(foot));
        assertFalse(render(new Block.Banner(Block.Tone.ATTENTION, "A draft")).contains(foot));
    }

    private static String render(Block... blocks) {
        return new HtmlRenderer().render(new Page("A & B", List.of(blocks)));
    }

    @Test
    void everythingIsEscaped() {
        var html = render(new Paragraph(Spans.of("<script>alert(\"x\")</script> & 'more'")));
        assertTrue(html.contains("<p>&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &#39;more&#39;</p>"));
        assertTrue(html.contains("<title>A &amp; B</title>"));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyElementThatIsOpenedIsClosedAndNothingIsFetched(Kind kind) {
        var element = (TopElement) new Filler().fill(BookFactory.eINSTANCE.create(kind.type()));
        var html = new HtmlRenderer().render(new Pages(new TestBook(folder).library()).of(element));
        assertBalanced(html);
        assertFalse(Pattern.compile("<script|<link|@import|url\\(|(?:src|href)=|https?:").matcher(html).find());
    }

    private static void assertBalanced(String html) {
        var open = new ArrayDeque<String>();
        var tags = Pattern.compile("<(/?)([!a-zA-Z0-9]+)[^>]*>").matcher(html);
        while (tags.find()) {
            if (!tags.group(1).isEmpty()) {
                assertEquals(open.poll(), tags.group(2));
            } else if (!VOID.contains(tags.group(2))) {
                open.push(tags.group(2));
            }
        }
        assertTrue(open.isEmpty(), open.toString());
    }

    @ParameterizedTest
    @CsvSource({"DANGER,danger", "WARNING,warning", "CAUTION,caution", "NOT_RECORDED,hazard-unsorted"})
    void aHazardToPeopleCarriesItsLookAndTheAlertSign(Signal signal, String look) {
        var html = render(new HazardPanel(signal, "Kind", "Consequence", "Avoidance"));
        assertTrue(html.contains("<section class=\"hazard " + look + "\""));
        assertTrue(html.contains("&#9888;"));
    }

    /** ANSI Z535.6 and ISO 3864-2: NOTICE is about property and never carries the alert sign. */
    @Test
    void aNoticeCarriesNoAlertSign() {
        assertFalse(render(new HazardPanel(Signal.NOTICE, "Kind", "Consequence", "Avoidance")).contains("&#9888;"));
    }

    /** Colours: ISO 3864-2:2016 as copied by an encyclopaedia. Contrast: WCAG 2.1 formula, from memory; 4.5 to 1. */
    @ParameterizedTest
    @CsvSource({"danger,#9B2423,#ffffff", "warning,#D05D29,#000000", "caution,#F9A800,#000000",
        "notice,#005387,#ffffff"})
    void signalWordsHaveTheStandardsColoursAndCanBeRead(String look, String ground, String ink) {
        assertTrue(Pattern.compile("\\." + look + " \\.signal[^{]*\\{ background: " + ground + "; color: " + ink + ";")
                .matcher(HtmlStyle.CSS).find());
        assertTrue((Math.max(luminance(ground), luminance(ink)) + 0.05)
                / (Math.min(luminance(ground), luminance(ink)) + 0.05) >= 4.5);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(String colour, int start) {
        double value = Integer.parseInt(colour.substring(start, start + 2), 16) / 255.0;
        return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    @Test
    void aLinkLeadsWhereTheCallerSays() {
        var page = new Page("Title", List.of(new Paragraph(List.of(
                new Span.Link("Press", new Address("tools/press.xmi", "press"))))));
        var html = new HtmlRenderer(target -> Optional.of(target.id() + ".html?a&b"), file -> Optional.empty())
                .render(page);
        assertTrue(html.contains("<a href=\"press.html?a&amp;b\">Press</a>"));
        assertTrue(new HtmlRenderer().render(page)
                .contains("<span class=\"element\" title=\"tools/press.xmi#press\">Press</span>"));
    }

    @Test
    void aPictureIsShownOnlyWhereTheCallerHasIt() {
        var page = new Page("Title", List.of(new Picture("pack.png", "The pack")));
        assertTrue(new HtmlRenderer(target -> Optional.empty(), file -> Optional.of("media/" + file)).render(page)
                .contains("<img src=\"media/pack.png\" alt=\"The pack\"><figcaption>The pack</figcaption>"));
        assertFalse(new HtmlRenderer().render(page).contains("<img"));
    }

    @Test
    void aTreeBecomesListsWithinLists() {
        var html = render(new Bullets(List.of(Spans.of("a"), Indent.by(1, Spans.of("b")), Indent.by(2, Spans.of("c")),
                Spans.of("d"))));
        assertTrue(html.contains("<ul>\n<li>a<ul>\n<li>b<ul>\n<li>c</li></ul></li></ul></li>\n<li>d</li>\n</ul>"));
    }

    @Test
    void itIsReadableInLightInDarkAndOnPaper() {
        assertTrue(HtmlStyle.CSS.contains("@media (prefers-color-scheme: dark)"));
        assertTrue(HtmlStyle.CSS.contains("@media print"));
    }
}
