// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrengthTest {

    private static final double KSI = 6.894757293168361;

    /** ISO 898-1, Table 3, MPa: bbshalmstad.se; proof: Shigley, 9th ed., Table 8-11; class 5.6 from memory. */
    @ParameterizedTest
    @CsvSource({"8.8, M16, 580, 640, 800", "8.8, M18, 600, 660, 830", "9.8, M16, 650, 720, 900",
        "10.9, M10, 830, 940, 1040", "12.9, M24, 970, 1100, 1220", "4.6, M8, 225, 240, 400", "4.8, M8, 310, 340, 420",
        "5.6, M8, 280, 300, 500", "5.8, M8, 380, 420, 520", "6.8, M8, 440, 480, 600"})
    void metricClassesAreAsInTheStandard(String name, String thread, double proof, double yield, double tensile) {
        assertEquals(new Strength(proof, yield, tensile, ""),
                Strength.of(PropertyClass.parse(name), BoltThread.parse(thread)));
    }

    /**
     * SAE J429, ksi: proof/yield/tensile (Shigley and Mischke, 5th ed., p. 341, at web.mst.edu; china-bolts.com). Grade 2
     * above 3/4 in from memory.
     */
    @ParameterizedTest
    @CsvSource({"2, 1/4-20, 55, 57, 74", "2, 3/4-10, 55, 57, 74", "2, 7/8-9, 33, 36, 60", "5, 1/4-20, 85, 92, 120",
        "5, 1-8, 85, 92, 120", "5, 1 1/8-7, 74, 81, 105", "5, 1 1/2-6, 74, 81, 105", "5.2, 1-8, 85, 92, 120",
        "8, 1/4-28, 120, 130, 150", "8, 1 1/2-12, 120, 130, 150", "8.2, 1-12, 120, 130, 150"})
    void inchGradesAreAsInTheStandard(String grade, String thread, double proof, double yield, double tensile) {
        var strength = Strength.of(PropertyClass.parse(grade), BoltThread.parse(thread));
        assertEquals(proof, strength.proof() / KSI, 1e-9);
        assertEquals(yield, strength.yield() / KSI, 1e-9);
        assertEquals(tensile, strength.tensile() / KSI, 1e-9);
    }

    /** ISO 3506-1, from memory: Rp0.2 and Rm. */
    @ParameterizedTest
    @CsvSource({"50, 210, 500", "70, 450, 700", "80, 600, 800"})
    void stainlessIsJudgedByItsYield(String name, double yield, double tensile) {
        var strength = Strength.of(PropertyClass.parse(name), BoltThread.parse("M24"));
        assertEquals(yield, strength.proof());
        assertEquals(yield, strength.yield());
        assertEquals(tensile, strength.tensile());
        assertTrue(strength.remark().contains("no proof stress") && !strength.remark().contains("above M24"));
    }

    @ParameterizedTest
    @CsvSource({"70, true", "80, true", "50, false"})
    void largeStainlessBoltsAreRemarkedUpon(String name, boolean remarked) {
        assertEquals(remarked, Strength.of(PropertyClass.parse(name), BoltThread.parse("M27")).remark()
                .contains("agreed with the supplier"));
    }

    /**
     * Published: proof loads in N for 8.8/10.9/12.9 (optimas.com, slsbearings.com): printed area times proof stress, cut or
     * rounded to three figures, so one of the third figure is allowed.
     */
    @ParameterizedTest
    @CsvSource({"M5, 14.2, 8230/11800/13800", "M6, 20.1, 11600/16700/19500", "M7, 28.9, 16800/24000/28000",
        "M8, 36.6, 21200/30400/35500", "M10, 58.0, 33700/48100/56300", "M12, 84.3, 48900/70000/81800",
        "M14, 115, 66700/95500/112000", "M16, 157, 91000/130000/152000", "M18, 192, 115000/159000/186000",
        "M20, 245, 147000/203000/238000", "M22, 303, 182000/252000/294000", "M24, 353, 212000/293000/342000"})
    void proofLoadsAreAsPrinted(String thread, double area, String loads) {
        assertLoads(thread, area, loads, true);
    }

    /** Published: least breaking loads in N for 8.8/10.9/12.9 (usefastener.com, EN ISO 898-1). */
    @ParameterizedTest
    @CsvSource({"M5, 14.2, 11350/14800/17300", "M6, 20.1, 16100/20900/24500", "M7, 28.9, 23100/30100/35300",
        "M8, 36.6, 29200/38100/44600", "M10, 58.0, 46400/60300/70800", "M12, 84.3, 67400/87700/103000",
        "M14, 115, 92000/120000/140000", "M16, 157, 125000/163000/192000", "M18, 192, 159000/200000/234000",
        "M20, 245, 203000/255000/299000", "M22, 303, 252000/315000/370000", "M24, 353, 293000/367000/431000"})
    void breakingLoadsAreAsPrinted(String thread, double area, String loads) {
        assertLoads(thread, area, loads, false);
    }

    private static void assertLoads(String thread, double area, String loads, boolean proof) {
        var names = new String[] {"8.8", "10.9", "12.9"};
        for (int i = 0; i < names.length; i++) {
            var bolt = BoltThread.parse(thread);
            var strength = Strength.of(PropertyClass.parse(names[i]), bolt);
            double stress = proof ? strength.proof() : strength.tensile();
            double printed = Double.parseDouble(loads.split("/")[i]);
            double digit = Math.pow(10, Math.floor(Math.log10(printed)) - 2);
            assertEquals(printed, area * stress, digit, thread + " " + names[i]);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"9.8|M18|ends at M16", "5.2|1 1/8-7|ends at 1 in", "8.2|1 1/4-12|ends at 1 in",
        "8.8|3/8-16|is for metric threads, but 3/8-16 UNC is not: write for example grade 5",
        "70|3/8-16|is for metric threads", "grade 8|M10|is for inch threads, but M10 is not: write for example 8.8"})
    void aBoltThatTheStandardHasNotIsRefused(String name, String thread, String wrong) {
        var propertyClass = PropertyClass.parse(name);
        var bolt = BoltThread.parse(thread);
        var message = assertThrows(IllegalArgumentException.class, () -> Strength.of(propertyClass, bolt)).getMessage();
        assertTrue(message.contains(wrong) && message.contains("for example"), message);
    }

    @ParameterizedTest
    @CsvSource({"8.8, class 8.8", "'8,8', class 8.8", "class 10.9, class 10.9", "Class 12.9, class 12.9",
        "ISO 898-1 class 8.8, class 8.8", "grade 8.8, class 8.8", "8, grade 8", "Gr 8, grade 8", "gr.5, grade 5",
        "SAE grade 5, grade 5", "SAE J429 grade 8.2, grade 8.2", "2, grade 2", "5.2, grade 5.2", "70, stainless class 70",
        "A2-70, stainless class 70", "a4 80, stainless class 80", "A4‑80, stainless class 80",
        "stainless 50, stainless class 50"})
    void classesAreReadAsPeopleWriteThem(String text, String words) {
        assertEquals(words, PropertyClass.parse(text).toString());
    }

    @ParameterizedTest
    @CsvSource({"88", "8.9", "10.8", "7", "A2", "A6-70", "60", "grade", "-8.8", "8.8.8", "1e1", "hardened",
        "8.8 and so on and on and on and on"})
    void whatIsNoClassIsRefused(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> PropertyClass.parse(text)).getMessage();
        assertTrue(message.endsWith("write for example 8.8, 10.9, grade 8 or A2-70."), message);
    }

    @Test
    void noTextIsNoClass() {
        assertThrows(IllegalArgumentException.class, () -> PropertyClass.parse(null));
        assertThrows(IllegalArgumentException.class, () -> PropertyClass.parse(" "));
        assertThrows(IllegalArgumentException.class, () -> new PropertyClass(PropertyClass.Family.SAE, "10.9"));
    }

    @Test
    void everyMarkReadsBack() {
        for (var family : PropertyClass.Family.values()) {
            for (var name : family.names()) {
                var made = new PropertyClass(family, name);
                assertEquals(made, PropertyClass.parse(name));
                assertEquals(made, PropertyClass.parse(made.toString().replace(" class", "")));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"600, 500, 700", "500, 600, 550", "0, 500, 600", "NaN, 1, 2"})
    void strengthsMustRise(double proof, double yield, double tensile) {
        assertThrows(IllegalArgumentException.class, () -> new Strength(proof, yield, tensile, ""));
    }

    @Test
    void hostileTextIsReadOrRefusedInOneSentence() {
        var random = new Random(23);
        var alphabet = "0123456789.,aA -gGrRadeSISOsae\u0000\n\uD83D[](*+?\\";
        int read = 0;
        for (int i = 0; i < 30_000; i++) {
            var text = new StringBuilder();
            random.ints(random.nextInt(8), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            try {
                PropertyClass.parse(text.toString());
                read++;
            } catch (IllegalArgumentException problem) {
                assertFalse(problem instanceof NumberFormatException, text.toString());
                assertTrue(problem.getMessage().endsWith(".") && !problem.getMessage().contains("\n"), problem.getMessage());
            }
        }
        assertTrue(read > 50 && read < 15_000, "read " + read);
    }
}
