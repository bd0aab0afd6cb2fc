// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.benchlore.page.drawing.Shape.Dash;
import org.benchlore.page.drawing.Shape.Label;
import org.benchlore.page.drawing.Shape.Ring;
import org.benchlore.torque.sequence.Stages;
import org.benchlore.torque.sequence.TighteningSequence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SequenceDrawingTest {

    private static Drawing draw(TighteningSequence sequence) {
        return SequenceDrawing.of(sequence, Stages.USUAL);
    }

    static Stream<TighteningSequence> sequences() {
        return Stream.of(IntStream.rangeClosed(3, 64).mapToObj(TighteningSequence::circle),
                Stream.of("1x2", "1x6", "2x5", "4x4", "10x20", "20x1").map(TighteningSequence::grid),
                Stream.of("3 1 2", "12 1 11 2 10 3 9 4 8 5 7 6").map(TighteningSequence::own)).flatMap(all -> all);
    }

    private static <T extends Shape> List<T> marks(Drawing drawing, Class<T> kind) {
        return drawing.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @ParameterizedTest
    @MethodSource("sequences")
    void everyFastenerHasARingWithItsTurnAndItsPlaceBeside(TighteningSequence sequence) {
        var drawing = draw(sequence);
        var rings = marks(drawing, Ring.class);
        var labels = marks(drawing, Label.class).stream().filter(Label::middle).toList();
        int count = sequence.layout().count();
        assertEquals(count, rings.size());
        for (int i = 0; i < count; i++) {
            var turn = labels.get(2 * i);
            assertEquals(String.valueOf(sequence.turnOf(i + 1)), turn.text());
            assertTrue(turn.strong() && turn.x() == rings.get(i).x() && turn.y() == rings.get(i).y());
            assertEquals(String.valueOf(i + 1), labels.get(2 * i + 1).text());
            assertEquals(sequence.turnOf(i + 1) == 1, rings.get(i).line() > 3);
        }
    }

    @ParameterizedTest
    @MethodSource("sequences")
    void nothingOverlapsAndNothingIsCut(TighteningSequence sequence) {
        var drawing = draw(sequence);
        var rings = marks(drawing, Ring.class);
        for (int i = 0; i < rings.size(); i++) {
            var one = rings.get(i);
            for (var other : rings.subList(i + 1, rings.size())) {
                assertTrue(Math.hypot(one.x() - other.x(), one.y() - other.y()) > 2 * Spots.RING + 4);
            }
        }
        for (var label : marks(drawing, Label.class)) {
            double half = label.text().length() * label.size() * 0.62 / (label.middle() ? 2 : 1);
            assertTrue(label.x() + half <= drawing.width() && label.x() >= (label.middle() ? half : 0), label.toString());
            assertTrue(label.y() > label.size() / 2 && label.y() + label.size() / 2 < drawing.height(), label.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("sequences")
    void placeNumbersTouchNoRing(TighteningSequence sequence) {
        var drawing = draw(sequence);
        var rings = marks(drawing, Ring.class);
        var beside = marks(drawing, Label.class).stream().filter(label -> label.middle() && !label.strong()).toList();
        for (var label : beside) {
            assertTrue(rings.stream().allMatch(ring -> Math.hypot(ring.x() - label.x(), ring.y() - label.y())
                    > Spots.RING + 5), label.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("sequences")
    void theSvgIsWellFormedAndBlackAndWhite(TighteningSequence sequence) throws Exception {
        var svg = draw(sequence).svg();
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        var root = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
        assertEquals("img", root.getAttribute("role"));
        var colours = new HashSet<String>();
        Pattern.compile("#[0-9a-f]+").matcher(svg).results().forEach(found -> colours.add(found.group()));
        assertEquals(Set.of("#ffffff", "#000000"), colours);
        assertFalse(svg.matches("(?s).*(href|<script|<style|url\\().*"));
    }

    @Test
    void theFirstFourTurnsAreJoinedByDashes() {
        var drawing = draw(TighteningSequence.circle(8));
        var dashes = marks(drawing, Dash.class);
        var rings = marks(drawing, Ring.class);
        assertEquals(3, dashes.size());
        assertEquals(rings.get(0).x(), dashes.get(0).fromX(), 1e-9);
        assertEquals(rings.get(4).y(), dashes.get(0).toY(), 1e-9);
        assertEquals(rings.get(6).x(), dashes.get(2).toX(), 1e-9);
        assertEquals(2, marks(draw(TighteningSequence.circle(3)), Dash.class).size());
        assertEquals(List.of(), marks(draw(TighteningSequence.grid(2, 5)), Dash.class));
    }

    @Test
    void typeGrowsWithALargeDrawing() {
        var small = marks(draw(TighteningSequence.circle(8)), Label.class).stream().filter(label -> !label.middle()).toList();
        var large = marks(draw(TighteningSequence.circle(64)), Label.class).stream().filter(label -> !label.middle()).toList();
        assertEquals(13, small.get(0).size());
        assertTrue(large.get(0).size() > 20);
    }

    @Test
    void placesGoClockwiseFromTheTop() {
        var rings = marks(draw(TighteningSequence.circle(4)), Ring.class);
        assertTrue(rings.get(0).y() < rings.get(2).y() && rings.get(1).x() > rings.get(3).x());
        assertEquals(rings.get(0).x(), rings.get(2).x(), 1e-9);
    }

    @Test
    void placesGoRowByRowFromTheLeft() {
        var rings = marks(draw(TighteningSequence.grid(2, 3)), Ring.class);
        assertTrue(rings.get(1).x() > rings.get(0).x() && rings.get(3).y() > rings.get(2).y());
        assertEquals(rings.get(0).x(), rings.get(3).x());
    }

    @Test
    void stagesLooseningRuleAndCautionStandInTheDrawing() {
        var text = String.join(" ", marks(draw(TighteningSequence.circle(8)), Label.class).stream().map(Label::text).toList());
        for (var words : List.of("Stages: 30 %, 70 %, 100 %; then once round clockwise at 100 %", "numbered clockwise from the top",
                "Loosen in the reverse order", "ASME PCC-1", "Check against the manufacturer's data for this machine",
                "a licensed person decide")) {
            assertTrue(text.contains(words), words + " is not in " + text);
        }
        assertFalse(text.contains("Drawn in a row"));
        var own = draw(TighteningSequence.own("3 1 2")).description();
        assertTrue(own.startsWith("Places numbered by their own source, in the order in which they are tightened: 3, 1, 2. "), own);
        assertTrue(own.contains("Drawn in a row"), own);
    }

    @Test
    void theTextDoesNotDependOnTheMachine() {
        var before = Locale.getDefault();
        try {
            var english = draw(TighteningSequence.circle(7)).svg();
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(english, draw(TighteningSequence.circle(7)).svg());
            Locale.setDefault(Locale.GERMANY);
            assertEquals(english, draw(TighteningSequence.circle(7)).svg());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatIsWrittenIsEscaped() {
        var drawing = new Drawing(10, 10, "a<b & \"c\"\u0000", "d>\uFFFF", List.of(new Label(1, 1, 10, false, false, "<x>")));
        var svg = drawing.svg();
        assertTrue(svg.contains("<title>a&lt;b &amp; &quot;c&quot;</title>"), svg);
        assertTrue(svg.contains("<desc>d&gt;</desc>") && svg.contains(">&lt;x&gt;</text>"), svg);
    }

    @Test
    void linesBreakAtBlanks() {
        assertEquals(List.of("aa bb", "cc", "dddddddd", "e"), SequenceDrawing.lines("aa bb cc dddddddd e", 5));
        assertEquals(List.of("aa bb"), SequenceDrawing.lines("aa bb", 5));
    }
}
