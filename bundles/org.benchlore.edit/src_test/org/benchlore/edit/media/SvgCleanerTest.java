// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drawing keeps what draws and loses what acts or fetches. */
class SvgCleanerTest {

    private static final String OPEN = "<svg xmlns=\"http://www.w3.org/2000/svg\""
            + " xmlns:xlink=\"http://www.w3.org/1999/xlink\" xmlns:x=\"urn:x\">";
    private static final String RECT = "<rect width=\"2\" height=\"3\"/>";

    private static String clean(String inner) throws MediaException {
        return cleanWhole(OPEN + inner + "</svg>");
    }

    private static String cleanWhole(String whole) throws MediaException {
        return new String(SvgCleaner.clean(whole.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8);
    }

    private static String drawing(String inner) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\">" + inner + "</svg>";
    }

    @Test
    void whatDrawsStays() throws MediaException {
        var inner = "<title>Oil &amp; plug</title><defs><linearGradient id=\"g\"><stop offset=\"1\" stop-color=\"#fff\">"
                + "</stop></linearGradient></defs><g transform=\"translate(1 2)\" fill=\"url(#g)\" style=\"stroke:red\">"
                + "<path d=\"M0 0L1 1\"></path><text x=\"1\">45 N·m</text></g>";
        assertEquals(drawing(inner), clean(inner));
    }

    /** Each is followed by a rectangle, which must be all that is left. */
    @ParameterizedTest
    @ValueSource(strings = {
        "<script>alert(1)</script>", "<script href=\"http://x/y.js\"/>", "<x:script>alert(1)</x:script>",
        "<foreignObject><body xmlns=\"http://www.w3.org/1999/xhtml\"><script>alert(1)</script></body></foreignObject>",
        "<a href=\"javascript:alert(1)\"><rect/></a>", "<animate attributeName=\"href\" to=\"javascript:alert(1)\"/>",
        "<set attributeName=\"onclick\" to=\"alert(1)\"/>", "<filter id=\"f\"><feImage href=\"http://x/y\"/></filter>",
        "<iframe src=\"http://x\"/>", "<handler>alert(1)</handler>", "<metadata>place</metadata>",
        "<style>@import url(http://x/y.css);</style>", "<style>rect{fill:url(http://x/y)}</style>",
        "<style>rect{fill:u\\72l(http://x/y)}</style>", "<style>rect{background:image-set('http://x' 1x)}</style>",
        "<style>@font-face{src:url(data:x)}</style>", "<!-- place -->", "<?xml-stylesheet href=\"http://x/y.css\"?>",
        "<x:anything><rect/></x:anything>", "<SCRIPT>alert(1)</SCRIPT>"})
    void whatActsOrFetchesIsLeftOut(String hostile) throws MediaException {
        assertEquals(drawing("<rect width=\"2\" height=\"3\"></rect>"), clean(hostile + RECT));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "onload=\"alert(1)\"", "onclick=\"alert(1)\"", "ONLOAD=\"alert(1)\"", "href=\"http://x/y\"",
        "xlink:href=\"http://x/y.svg#a\"", "xlink:href=\"javascript:alert(1)\"", "xlink:href=\"&#106;avascript:alert(1)\"",
        "href=\" data:image/svg+xml;base64,PHN2Zy8+\"", "href=\"file:///etc/passwd\"", "x:onload=\"1\"",
        "style=\"fill:url(http://x/y)\"", "style=\"fill:url( 'http://x/y' )\"", "style=\"fill:URL(//x/y)\"",
        "style=\"fill:u\\72l(http://x)\"", "style=\"behavior:expression(alert(1))\"", "style=\"fill:/**/url(http://x)\"",
        "fill=\"url(http://x/y#z)\"", "mask=\"url(other.svg#m)\"", "clip-path=\"url(data:x)\"", "filter=\"url(#f)\"",
        "style=\"background:image('http://x')\"", "fill=\"javascript:x\"", "src=\"http://x\""})
    void anAttributeThatActsOrFetchesIsLeftOut(String hostile) throws MediaException {
        assertEquals(drawing("<use width=\"2\"></use>"), clean("<use " + hostile + " width=\"2\"/>"));
    }

    @Test
    void aLinkWithinTheDrawingStays() throws MediaException {
        assertEquals(drawing("<path id=\"p\"></path><use href=\"#p\"></use>"), clean("<path id=\"p\"/><use xlink:href=\"#p\"/>"));
    }

    @Test
    void aPictureInTheDrawingIsCleanedToo() throws Exception {
        var photo = Base64.getEncoder().encodeToString(Pictures.jpeg(1, ByteOrder.BIG_ENDIAN));
        var clean = clean("<image href=\"data:image/jpeg;base64," + photo + "\"/>");
        var data = clean.substring(clean.indexOf("base64,") + 7, clean.indexOf("\"", clean.indexOf("base64,")));
        assertFalse(Pictures.holdsSecret(Base64.getDecoder().decode(data)));
        assertEquals(32, Pictures.read(Base64.getDecoder().decode(data)).getWidth());
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://x/y.png", "data:image/svg+xml;base64,PHN2Zy8+", "data:image/png;base64,PHN2Zy8+",
        "data:text/html;base64,PHN2Zy8+", "#p", "data:image/png,x"})
    void anyOtherPictureIsLeftOut(String address) throws MediaException {
        assertEquals(drawing("<image width=\"1\"></image>"), clean("<image width=\"1\" href=\"" + address + "\"/>"));
    }

    @Test
    void aDocumentTypeIsPassedOverAndOpensNothing() throws MediaException {
        assertEquals(drawing("<rect></rect>"), cleanWhole("<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\""
                + " \"http://127.0.0.1:9/svg11.dtd\">" + OPEN + "<rect/></svg>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<!ENTITY a \"b\">", "<!ENTITY a SYSTEM \"file:///etc/hostname\">",
        "<!ENTITY % p SYSTEM \"http://127.0.0.1:9/x\"> %p; <!ENTITY a \"b\">"})
    void noEntityIsReplaced(String declaration) {
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> assertThrows(MediaException.class, () ->
                cleanWhole("<!DOCTYPE svg [" + declaration + "]>" + OPEN + "<text>&a;</text></svg>")));
    }

    @Test
    void entitiesThatGrowWithoutBoundAreRefusedAtOnce() {
        var type = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 \"laugh\">");
        for (int i = 1; i < 12; i++) {
            type.append("<!ENTITY a").append(i).append(" \"").append(("&a" + (i - 1) + ";").repeat(10)).append("\">");
        }
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> assertThrows(MediaException.class, () ->
                cleanWhole(type + "]>" + OPEN + "<text>&a11;</text></svg>")));
    }

    @Test
    void partsThatUseOneAnotherWithoutBoundAreRefused() {
        var inner = new StringBuilder("<g id=\"a0\"><rect/></g>");
        for (int i = 1; i < 10; i++) {
            inner.append("<g id=\"a").append(i).append("\">").append(("<use href=\"#a" + (i - 1) + "\"/>").repeat(10))
                    .append("</g>");
        }
        assertTrue(assertThrows(MediaException.class, () -> clean(inner.toString())).getMessage().contains("too often"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<g id=\"a\"><use href=\"#a\"/></g>",
        "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><use href=\"#a\"/></g>",
        "<pattern id=\"a\"><rect fill=\"url(#a)\"/></pattern><rect fill=\"url(#a)\"/>"})
    void partsThatUseThemselvesAreRefused(String circle) {
        assertThrows(MediaException.class, () -> clean(circle));
    }

    @Test
    void aDrawingNestedTooDeeplyIsRefused() {
        assertThrows(MediaException.class, () -> clean("<g>".repeat(5000) + "</g>".repeat(5000)));
    }

    /** Pieces of hostile drawings put together at random: whatever is accepted can neither act nor fetch. */
    @Test
    void noMixtureGetsThrough() {
        var pieces = new String[] {"<g>", "</g>", "<script>", "</script>", "<use ", "href='", "xlink:href=\"", "http://x",
            "javascript:alert(1)", "'", "\"", "/>", ">", "<style>", "</style>", "@import ", "url(", ")", "#a", " onload='x'",
            "<![CDATA[", "]]>", "<!--", "-->", "&lt;", "&#60;script&#62;", "<image ", "<text>", "</text>", "style='fill:"};
        var random = new Random(20261125);
        int accepted = 0;
        for (int i = 0; i < 30_000; i++) {
            var inner = new StringBuilder();
            for (int n = random.nextInt(9); n >= 0; n--) {
                inner.append(pieces[random.nextInt(pieces.length)]);
            }
            try {
                var clean = clean(inner.toString());
                accepted++;
                var tags = clean.replaceAll(">[^<]*<", "><").toLowerCase(Locale.ROOT);
                assertFalse(tags.matches("(?s).*(<script|onload|http://x|javascript:|@import).*"), inner + " -> " + clean);
            } catch (MediaException e) {
                assertTrue(e.getMessage().contains(":"));
            }
        }
        assertTrue(accepted > 300, "only " + accepted + " were accepted");
    }
}
