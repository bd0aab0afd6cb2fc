// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.NullAndEmptySource;

class ThreadDesignationTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"M10|M10|METRIC_COARSE|10|1.5", "m10|M10|METRIC_COARSE|10|1.5",
        "M 10|M10|METRIC_COARSE|10|1.5", "M10x1.25|M10×1.25|METRIC_FINE|10|1.25",
        "M10×1,25|M10×1.25|METRIC_FINE|10|1.25", "M10*1.25|M10×1.25|METRIC_FINE|10|1.25",
        "M10 X 1.25|M10×1.25|METRIC_FINE|10|1.25", "M10x1.5|M10|METRIC_COARSE|10|1.5",
        "M10x1.50|M10|METRIC_COARSE|10|1.5", "M10x1|M10×1|METRIC_FINE|10|1", "M10x1.0|M10×1|METRIC_FINE|10|1",
        "M2.5|M2.5|METRIC_COARSE|2.5|0.45", "M39x3|M39×3|METRIC_FINE|39|3", "M10x1.25-6g|M10×1.25|METRIC_FINE|10|1.25",
        "M10-6H|M10|METRIC_COARSE|10|1.5", "M10 coarse|M10|METRIC_COARSE|10|1.5",
        "M10x1.25 fine|M10×1.25|METRIC_FINE|10|1.25", "3/8-16 UNC|3/8-16 UNC|UNC|9.525|1.5875",
        "3/8-16|3/8-16 UNC|UNC|9.525|1.5875", "3/8-16UNC-2A|3/8-16 UNC|UNC|9.525|1.5875",
        "3/8 UNC|3/8-16 UNC|UNC|9.525|1.5875", "3/8 unf|3/8-24 UNF|UNF|9.525|1.0583333",
        "3/8\"-16|3/8-16 UNC|UNC|9.525|1.5875", "7/16-20|7/16-20 UNF|UNF|11.1125|1.27",
        "1-8|1-8 UNC|UNC|25.4|3.175", "1-12 UNF|1-12 UNF|UNF|25.4|2.1166667", "1 1/4-7|1 1/4-7 UNC|UNC|31.75|3.6285714",
        "1-1/4-7 UNC|1 1/4-7 UNC|UNC|31.75|3.6285714", "1 1/2-12|1 1/2-12 UNF|UNF|38.1|2.1166667",
        "1\" 1/8-7|1 1/8-7 UNC|UNC|28.575|3.6285714"})
    void readsHowPeopleWriteIt(String text, String designation, ThreadSeries series, double diameter, double pitch) {
        var thread = ThreadDesignation.parse(text).thread();
        assertEquals(designation, thread.toString());
        assertEquals(series, thread.series());
        assertEquals(diameter, thread.diameter(), 1e-9);
        assertEquals(pitch, thread.pitch(), 1e-7);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"M10×1.25-8.8|class 8.8", "M10-10.9|class 10.9", "M12 class 12.9|class 12.9",
        "M8 A2-70|stainless class 70", "M8-A4-80|stainless class 80", "3/8-16 UNC Gr 5|grade 5",
        "1/2-20 grade 8.2|grade 8.2", "M10x1.25-6g-10.9|class 10.9", "M10-10.9-LH|class 10.9", "M10 coarse 8.8|class 8.8", "M10x1.25 fine-10.9|class 10.9", "7/16-20 SAE grade 8|grade 8"})
    void readsTheClassBesideIt(String text, String propertyClass) {
        assertEquals(propertyClass, ThreadDesignation.parse(text).propertyClass().orElseThrow().toString());
    }

    @ParameterizedTest
    @CsvSource({"M10x1.25 LH, true", "M10 left-hand, true", "M10-LH, true", "M10 lh, true", "M10 RH, false", "M10, false",
        "1/2-20 UNF LH, true"})
    void readsTheHand(String text, boolean leftHanded) {
        assertEquals(leftHanded, ThreadDesignation.parse(text).leftHanded());
    }

    @Test
    void keepsTheTextAsEntered() {
        assertEquals("m10X1,25 - 8.8", ThreadDesignation.parse("  m10X1,25 - 8.8 ").toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"M10x30|has the pitch 30, but M10 has 1.5, 1.25, 1, 0.75",
        "M10x2|has the pitch 2", "M10x1.25x40|holds 'x40'", "M13|has a size that is not known here (M1.6 to M39",
        "M99|has a size that is not known here", "M100|is no thread known here", "M10 fine|leaves the fine pitch open",
        "M10x1.25 coarse|is two things", "M10x1.5 fine|is two things", "M10 UNC|is two things",
        "M10-8.7|is no class known here", "M10-6g-6g|holds '6g'", "M10 LH RH|holds 'RH'", "M10 8.8 8.8|holds '8.8'",
        "M10 bolt|holds 'bolt'", "3/8|leaves the threads to the inch open: write 3/8-16 or 3/8-24",
        "3/8-18|has 18 threads to the inch, but 3/8 has 16, 24", "3/8-16 UNF|is two things: 3/8-16 is UNC",
        "3/8-24 UNC|is two things: 3/8-24 is UNF", "3/8-16 UNEF|is of a series that is not reckoned with here (metric, UNC and UNF are", "1-8UN|is of a series", "1 8 UN|is of a series",
        "1 1/8-8 8UN|is of a series", "#4-40|is a numbered inch size", "No. 12-24 UNC|is a numbered inch size", "M42|M1.6 to M39, the range of ISO 898-1",
        "M64x4|take the maker's figure", "1/2-14 NPT|is a pipe thread", "R 3/4|is a pipe thread", "Tr20x4|is of a series", "1/4-20 BSW|is of a series",
        "3/7-16|has a size that is not known here", "8/3-16|is no inch size", "0/8-16|is no inch size",
        "3/0-16|is no inch size", "2-4|has a size that is not known here", "#10-32|is a numbered inch size",
        "G1/2|is a pipe thread", "hello|is no thread known here", "M|is no thread known here",
        "-M10|is no thread known here", "M-10|is no thread known here", "10.9|is no thread known here",
        "M1O|has a size that is not known here", "M\u000710|is no thread: write", "3/3-16|is no inch size",
        "M10 coarse fine|holds 'fine'"})
    void saysInOneSentenceWhatIsWrong(String text, String wrong) {
        var message = problem(text);
        assertTrue(message.contains(wrong), message);
        assertTrue(message.matches("[^\\p{Cntrl}]*write [^\\p{Cntrl}]+\\."), message);
    }

    @ParameterizedTest
    @NullAndEmptySource
    void anEmptyTextIsSaidToBeEmpty(String text) {
        assertTrue(problem(text).startsWith("No thread is written here"), problem(text));
    }

    @Test
    void sizesAndSeriesAreNamed() {
        assertTrue(problem("2-4").contains("(1/4, 5/16, 3/8, 7/16, 1/2, 9/16, 5/8, 3/4, 7/8, 1, 1 1/8, 1 1/4, 1 3/8, 1 1/2)"));
        assertEquals("metric fine", ThreadSeries.METRIC_FINE.words());
        assertEquals("ASME B1.1", ThreadSeries.UNF.standard());
    }

    @Test
    void aLongTextIsQuotedShort() {
        assertTrue(problem("M10".repeat(10_000)).length() < 160);
    }

    static Stream<BoltThread> all() {
        return new ThreadTable().all().stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void readsItsOwnWritingBack(BoltThread thread) {
        assertEquals(thread, BoltThread.parse(thread.toString()));
    }

    @Test
    void aHostileTextIsReadOrRefusedInOneSentence() {
        var random = new Random(17);
        var alphabet = "Mm0123456789/x×.,- \"UNCFLHRhgA\u00A0\u0000\uD83D\n#\\[](){}*+?$";
        int read = 0;
        for (int i = 0; i < 50_000; i++) {
            var text = new StringBuilder(random.nextInt(3) == 0 ? "M1" : random.nextInt(3) == 0 ? "3/8-" : "");
            random.ints(random.nextInt(9), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            try {
                assertEquals(text.toString().strip(), ThreadDesignation.parse(text.toString()).text());
                read++;
            } catch (IllegalArgumentException problem) {
                assertFalse(problem instanceof NumberFormatException, text.toString());
                assertTrue(problem.getMessage().endsWith(".") && !problem.getMessage().contains("\n"), problem.getMessage());
            }
        }
        assertTrue(read > 100 && read < 25_000, "read " + read);
    }

    private static String problem(String text) {
        return assertThrows(IllegalArgumentException.class, () -> ThreadDesignation.parse(text)).getMessage();
    }

    @Test
    void fortyLettersAreReadAndMoreAreNot() {
        assertEquals("M10", ThreadDesignation.parse("M10" + " ".repeat(34) + "8.8").thread().designation());
        assertTrue(problem("M10" + " ".repeat(35) + "8.8").contains("is no thread: write"));
    }
}
