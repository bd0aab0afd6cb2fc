// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.StatedTorque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TighteningSequenceTest {

    private static List<Integer> numbers(String text) {
        return Arrays.stream(text.split("[,→ ]+")).map(Integer::valueOf).toList();
    }

    /** From memory: ASME PCC-1 (2010, 2013), Table 4; 12 also seen on an unsourced page. Places clockwise. */
    @ParameterizedTest
    @ValueSource(strings = {"1,3,2,4", "1,5,3,7→2,6,4,8", "1,7,4,10→2,8,5,11→3,9,6,12",
        "1,9,5,13→3,11,7,15→2,10,6,14→4,12,8,16", "1,11,6,16→3,13,8,18→5,15,10,20→2,12,7,17→4,14,9,19",
        "1,13,7,19→4,16,10,22→2,14,8,20→5,17,11,23→3,15,9,21→6,18,12,24",
        "1,15,8,22→4,18,11,25→6,20,13,27→2,16,9,23→5,19,12,26→7,21,14,28→3,17,10,24",
        "1,17,9,25→5,21,13,29→3,19,11,27→7,23,15,31→2,18,10,26→6,22,14,30→4,20,12,28→8,24,16,32"})
    void publishedCrossPatternsAreUsed(String pattern) {
        var order = numbers(pattern);
        var sequence = TighteningSequence.circle(order.size());
        assertEquals(order, sequence.order());
        assertEquals(OrderRule.PUBLISHED, sequence.rule());
    }

    static IntStream circles() {
        return IntStream.rangeClosed(3, 64);
    }

    @ParameterizedTest
    @MethodSource("circles")
    void aCircleIsAPermutation(int count) {
        var sequence = TighteningSequence.circle(count);
        assertEquals(count, sequence.order().size());
        assertEquals(count, new HashSet<>(sequence.order()).size());
        assertEquals(1, sequence.order().get(0));
        assertEquals(sequence, TighteningSequence.circle(String.valueOf(count)));
        assertEquals(CrossPatterns.of(count).isPresent(), sequence.rule() == OrderRule.PUBLISHED);
    }

    /**
     * Neighbours never follow each other where that can be avoided: with three all are neighbours, with four the published
     * pattern has one such pair because any order that starts across must.
     */
    @ParameterizedTest
    @MethodSource("circles")
    void neighboursDoNotFollowEachOther(int count) {
        var order = TighteningSequence.circle(count).order();
        long together = IntStream.range(1, count).filter(i -> {
            int way = Math.abs(order.get(i) - order.get(i - 1));
            return Math.min(way, count - way) == 1;
        }).count();
        assertEquals(count == 3 ? 2 : count == 4 ? 1 : 0, together, order.toString());
    }

    /** With an even number the second of every pair lies opposite the first: load comes on evenly. */
    @ParameterizedTest
    @MethodSource("circles")
    void anEvenCircleGoesByOppositePairs(int count) {
        var order = TighteningSequence.circle(count).order();
        for (int i = 0; count % 2 == 0 && i < count; i += 2) {
            assertEquals(count / 2, Math.abs(order.get(i) - order.get(i + 1)), order.toString());
        }
    }

    /** The stated rule gives the star of five (common practice, no source), and the published patterns of 4 and 8. */
    @ParameterizedTest
    @CsvSource({"3, '1 2 3'", "5, '1 3 5 2 4'", "6, '1 4 2 5 3 6'", "10, '1 6 3 8 2 7 4 9 5 10'", "4, '1 3 2 4'",
        "8, '1 5 3 7 2 6 4 8'"})
    void theStatedRuleGivesWhatItSays(int count, String order) {
        assertEquals(numbers(order), SpreadRule.order(count));
    }

    @ParameterizedTest
    @CsvSource({"2", "0", "65", "1000"})
    void circlesOutsideTheRangeAreRefused(String count) {
        var message = assertThrows(IllegalArgumentException.class, () -> TighteningSequence.circle(count)).getMessage();
        assertTrue(message.contains("is outside 3 to 64") && message.contains("for example 8"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "eight", "8.5", "-8", "8 8", "99999"})
    void whatIsNoNumberIsNamed(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> TighteningSequence.circle(text)).getMessage();
        assertTrue(message.contains("is no number of fasteners in a circle"), message);
    }

    /** From the middle outwards, changing sides (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"1x5, '3 2 4 1 5'", "1x4, '2 3 1 4'", "1x2, '1 2'", "2x3, '2 5 1 6 4 3'", "3x3, '5 2 8 4 6 1 9 3 7'",
        "2x5, '3 8 2 9 7 4 6 5 1 10'", "5x1, '3 2 4 1 5'"})
    void aRectangleGoesFromTheMiddleOutwards(String sides, String order) {
        var sequence = TighteningSequence.grid(sides);
        assertEquals(OrderRule.INSIDE_OUT, sequence.rule());
        assertEquals(numbers(order), sequence.order());
    }

    static Stream<Layout.Grid> grids() {
        return IntStream.rangeClosed(1, 10).boxed().flatMap(rows -> IntStream.rangeClosed(1, 20).boxed()
                .filter(columns -> rows * columns > 1).map(columns -> new Layout.Grid(rows, columns)));
    }

    @ParameterizedTest
    @MethodSource("grids")
    void aRectangleIsAPermutationThatNeverComesBackInwards(Layout.Grid grid) {
        var order = TighteningSequence.of(grid).order();
        assertEquals(grid.count(), new HashSet<>(order).size());
        double before = 0;
        for (int place : order) {
            double down = (place - 1) / grid.columns() - (grid.rows() - 1) / 2.0;
            double across = (place - 1) % grid.columns() - (grid.columns() - 1) / 2.0;
            double distance = Math.hypot(down, across);
            assertTrue(distance >= before - 1e-9, order.toString());
            before = distance;
        }
    }

    @ParameterizedTest
    @CsvSource({"2x5, 2, 5", "2X5, 2, 5", "2×5, 2, 5", "2 x 5, 2, 5", "2*5, 2, 5"})
    void rectanglesAreReadAsPeopleWriteThem(String text, int rows, int columns) {
        assertEquals(new Layout.Grid(rows, columns), TighteningSequence.grid(text).layout());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "10", "0x5", "5x0", "1x1", "21x1", "1x21", "11x20", "axb", "2x5x3", "-2x5"})
    void whatIsNoRectangleIsRefused(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> TighteningSequence.grid(text)).getMessage();
        assertTrue(message.contains("2x5") && message.endsWith("."), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3 1 2 4", "3,1,2,4", "3, 1, 2, 4", "3->1->2->4", "3 → 1 → 2 → 4", " 3;1;2;4 "})
    void anOwnOrderIsRead(String text) {
        var sequence = TighteningSequence.own(text);
        assertEquals(List.of(3, 1, 2, 4), sequence.order());
        assertEquals(OrderRule.OWN, sequence.rule());
        assertEquals(new Layout.Listed(4), sequence.layout());
        assertEquals(2, sequence.turnOf(1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1 2 2|names place 2 twice", "1 2 4|names place 4, but there are 3 places",
        "0 1 2|names place 0", "1-4|'1-4' is no place number", "1 two 3|'two' is no place number", "1|outside 2 to 200",
        "1,,2|'' is no place number"})
    void anOrderThatIsNoneIsRefused(String text, String wrong) {
        var message = assertThrows(IllegalArgumentException.class, () -> TighteningSequence.own(text)).getMessage();
        assertTrue(message.contains(wrong) && message.endsWith("."), message);
    }

    @Test
    void anEmptyOrderIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TighteningSequence.own(" "));
        assertThrows(IllegalArgumentException.class, () -> TighteningSequence.own((String) null));
        assertThrows(IllegalArgumentException.class, () -> TighteningSequence.own("1 ".repeat(700)));
    }

    @Test
    void anOwnOrderCanLieOverACircle() {
        var circle = new Layout.Circle(4);
        assertEquals(List.of(4, 2, 1, 3), TighteningSequence.own(circle, "4 2 1 3").order());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> TighteningSequence.own(circle, "1 2 3")).getMessage()
                .contains("names 3 of 4 places"));
    }

    @Test
    void looseningIsTheReverse() {
        assertEquals(List.of(8, 4, 6, 2, 7, 3, 5, 1), TighteningSequence.circle(8).loosening());
    }

    @Test
    void stagesAreFollowedByAClosingPass() {
        var passes = TighteningSequence.circle(4).passes(Stages.USUAL);
        assertEquals(List.of(new Pass(30, List.of(1, 3, 2, 4), false), new Pass(70, List.of(1, 3, 2, 4), false),
                new Pass(100, List.of(1, 3, 2, 4), false), new Pass(100, List.of(1, 2, 3, 4), true)), passes);
        assertEquals("once round clockwise at 100 %, until none turns any more", TighteningSequence.circle(4).closing());
        var row = TighteningSequence.grid(1, 3);
        assertEquals(new Pass(100, List.of(2, 1, 3), true), row.passes(Stages.parse("100")).get(1));
        assertEquals("once more in the same order at 100 %, until none turns any more", row.closing());
    }

    @Test
    void aListIsTakenAsNumbered() {
        assertEquals(List.of(1, 2, 3), TighteningSequence.of(new Layout.Listed(3)).order());
        assertThrows(IllegalArgumentException.class, () -> new Layout.Listed(201));
    }

    @Test
    void layoutsAndNumberingAreSaid() {
        assertEquals("circle of 8", new Layout.Circle(8).words());
        assertEquals("2 rows of 5", new Layout.Grid(2, 5).words());
        assertEquals("row of 5", new Layout.Grid(1, 5).words());
        assertEquals("5 as numbered by their own source", new Layout.Listed(5).words());
        assertEquals("places numbered clockwise from the top", TighteningSequence.circle(8).numbering());
        assertEquals("places numbered row by row from the left", TighteningSequence.grid(2, 5).numbering());
        assertEquals("places numbered by their own source", TighteningSequence.own("1 2").numbering());
        assertTrue(TighteningSequence.circle(8).assumptions().toString().contains("by hand"));
        assertEquals(4, Stream.of(OrderRule.values()).map(OrderRule::words).distinct().count());
    }

    /** Rounds of ASME PCC-1, from memory: 20 to 30 %, 50 to 70 %, 100 %. */
    @Test
    void theUsualStagesLieWithinThePublishedRounds() {
        assertEquals(List.of(30, 70, 100), Stages.USUAL.percents());
        assertEquals("30 %, 70 %, 100 %", Stages.USUAL.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"30,70,100", "30 70 100", "30%, 70%, 100%", "30;70;100"})
    void stagesAreRead(String text) {
        assertEquals(Stages.USUAL, Stages.parse(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"30,70|end at 100", "70,30,100|30 follows 70", "50,50,100|50 follows 50", "0,100|0 follows 0",
        "50,110|110 follows 50", "a,100|'a' is no stage", "10,20,30,40,50,60,100|one to six", "1000|'1000' is no stage",
        "-30,100|'-30' is no stage"})
    void stagesThatCannotBeAreRefused(String text, String wrong) {
        var message = assertThrows(IllegalArgumentException.class, () -> Stages.parse(text)).getMessage();
        assertTrue(message.contains(wrong) && message.endsWith("for example 30,70,100."), message);
    }

    @Test
    void noStagesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Stages.parse(""));
        assertThrows(IllegalArgumentException.class, () -> Stages.parse(null));
        assertThrows(IllegalArgumentException.class, () -> new Stages(List.of()));
        assertEquals(6, Stages.parse("10,20,30,40,50,100").percents().size());
    }

    @Test
    void stagesOfATorqueAreItsShares() {
        var torques = Stages.USUAL.of(StatedTorque.parse("90 N·m"));
        assertEquals(27, torques.get(0).in(MeasureUnits.NEWTON_METRE), 1e-9);
        assertEquals(63, torques.get(1).in(MeasureUnits.NEWTON_METRE), 1e-9);
        assertEquals(90, torques.get(2).in(MeasureUnits.NEWTON_METRE), 1e-9);
    }

    @Test
    void hostileTextIsReadOrRefusedInOneSentence() {
        var random = new Random(31);
        var alphabet = "0123456789x×,;-> →%\u0000\n\uD83D[](*+?\\a";
        int refused = 0;
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder();
            random.ints(random.nextInt(8), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            for (Runnable reading : List.<Runnable>of(() -> TighteningSequence.circle(text.toString()),
                    () -> TighteningSequence.grid(text.toString()), () -> TighteningSequence.own(text.toString()),
                    () -> Stages.parse(text.toString()))) {
                refused += refuses(reading);
            }
        }
        assertTrue(refused > 40_000 && refused < 80_000, "refused " + refused);
    }

    private static int refuses(Runnable reading) {
        try {
            reading.run();
            return 0;
        } catch (IllegalArgumentException problem) {
            assertTrue(!(problem instanceof NumberFormatException), problem.getMessage());
            assertTrue(problem.getMessage().endsWith(".") && !problem.getMessage().contains("\n"), problem.getMessage());
            return 1;
        }
    }
}
