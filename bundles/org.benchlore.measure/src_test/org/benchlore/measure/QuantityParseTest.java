// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParseTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "45 N·m|45|N·m", "45Nm|45|N·m", "+45 Nm|45|N·m", "12,5 mm|12.5|mm", "0,500 mm|0.500|mm", ".5 mm|0.5|mm",
            "1,234.5 km|1234.5|km", "1.234,5 km|1234.5|km", "1,234,567 km|1234567|km", "1.500 mm|1.500|mm",
            "1\u202F500 rpm|1500|rpm", "45\u00A0N·m|45|N·m", "-5 °C|-5|°C", "−5 °C|-5|°C", "–0.6 bar|-0.6|bar",
            "-0.5 °|-0.5|°", "80 C|80|°C", "800 1/min|800|rpm", "800 min-1|800|rpm", "40%|40|%",
            "400 starts|400|starts", "4 off|4|pcs", "1/2 in|0.5|in", "1 1/8 in|1.125|in", "3/8\"|0.375|in",
            "0 N·m|0|N·m"})
    void readsNumberAndUnit(String text, BigDecimal value, String symbol) {
        assertEquals(new Quantity(value, MeasureUnits.get(symbol), text), Quantity.parse(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "1 h 30 min|90|min", "1h30min|90|min", "1 hr, 30 mins|90|min", "2 days 4 hours|52|h",
            "1 h and 5 min|65|min",
            "1 min 30 s|90|s", "PT1H30M|90|min", "PT45M|45|min", "PT2H|2|h", "P1DT2H|26|h", "PT90S|90|s",
            "pt1,5h|1.5|h", "1.5 h|1.5|h", "35 min.|35|min"})
    void readsTimes(String text, BigDecimal value, String symbol) {
        assertEquals(new Quantity(value, MeasureUnits.get(symbol), text), Quantity.parse(text, Dimension.TIME));
    }

    @ParameterizedTest
    @CsvSource({"90 s, 2", "89 s, 1", "1.5 h, 90", "PT1H30M, 90", "0.5 min, 1", "1 day, 1440", "29 s, 0"})
    void roundsMinutesHalfUp(String text, long minutes) {
        assertEquals(minutes, Quantity.parse(text).minutes());
    }

    @Test
    void refusesMinutesOfALength() {
        var length = Quantity.parse("30 m");
        assertThrows(IllegalArgumentException.class, length::minutes);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "N·m|does not start with a number", "about 45 N·m|does not start with a number",
            "NaN N·m|does not start with a number", "Infinity mm|does not start with a number",
            "--5 °C|does not start with a number", "P1Y|does not start with a number",
            "PT|does not start with a number",
            "45|has no unit", "4O5 N·m|has a letter within the number", "1e999 mm|has a letter within the number",
            "1e-3 mm|has a letter within the number", "0x1F mm|has a letter within the number",
            "45 Nx|has a unit that is not known here", "45 MV|has a unit that is not known here",
            "45 MA|has a unit that is not known here", "45 Mm|has a unit that is not known here",
            "45 mpa|has a unit that is not known here", "45 kn|has a unit that is not known here",
            "45 50 N·m|holds more than one number", "45-50 N·m|holds more than one number",
            "45 ± 5 N·m|holds more than one number", "45 N·m 90 °|holds more than one number",
            "30 min 1 h|holds more than one number", "1:30 h|holds more than one number",
            "1/3 in|holds more than one number", "5 mm2 3|holds more than one number",
            "-45 N·m|is below zero", "-1 mm|is below zero", "-1 min|is below zero", "-1 kg|is below zero",
            "-1 l|is below zero", "-1 starts|is below zero", "-1 rpm|is below zero",
            "-300 °C|is colder than anything can be", "-1 K|is colder than anything can be",
            "1,500 rpm|can be read in two ways", "1.2.3 mm|is not one number", "1,2.3 mm|is not one number",
            "1234567890123456 mm|has more digits", "0.123456789012345678901 mm|has more digits",
            "45\u0007 N·m|holds a line break", "45\tN·m|holds a line break"})
    void saysInOneSentenceWhatIsWrong(String text, String wrong) {
        var message = problem(text).getMessage();
        assertTrue(message.contains(wrong), message);
        assertTrue(message.matches("[^\\p{Cntrl}]*: write [^\\p{Cntrl}]+\\."), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\u00A0"})
    void refusesAnEmptyText(String text) {
        assertEquals("Nothing is written here: write for example 45 N·m.", problem(text).getMessage());
    }

    @Test
    void refusesNoTextAtAll() {
        assertThrows(IllegalArgumentException.class, () -> Quantity.parse(null));
    }

    @Test
    void quotesALongTextShortened() {
        var message = problem("9".repeat(100_000) + " mm").getMessage();
        assertTrue(message.contains("is too long for a value") && message.length() < 150, message);
    }

    @Test
    void suggestsBothReadingsOfAnUnclearComma() {
        assertEquals("'1,500 rpm' can be read in two ways: write 1.500 for a fraction or 1500 for thousands.",
                problem("1,500 rpm").getMessage());
    }

    @Test
    void saysWhichDimensionBelongsHere() {
        var problem = assertThrows(IllegalArgumentException.class, () -> Quantity.parse("30 km", Dimension.TORQUE));
        assertEquals("'30 km' is a length, but a torque belongs here: write for example 45 N·m.", problem.getMessage());
    }

    @Test
    void givesAnExampleOfTheExpectedDimension() {
        var problem = assertThrows(IllegalArgumentException.class, () -> Quantity.parse("x", Dimension.TIME));
        assertEquals("'x' does not start with a number: write for example 35 min.", problem.getMessage());
    }

    @Test
    void trimsTheTextButKeepsItsInside() {
        assertEquals("12,5  Nm", Quantity.parse("  12,5  Nm\n").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"45 ft-lb", "PT1H30M", "1 1/8 in", "1 h 30 min", "12,5 mm", "-40 °F", "1.234,5 km"})
    void readsItsOwnTextBack(String text) {
        var quantity = Quantity.parse(text);
        assertEquals(quantity, Quantity.parse(quantity.toString()));
    }

    @Test
    void readsBackWhateverItConverts() {
        var random = new Random(7);
        for (var dimension : Dimension.values()) {
            for (var from : MeasureUnits.of(dimension)) {
                var quantity = Quantity.of(BigDecimal.valueOf(random.nextInt(1, 100_000), random.nextInt(4)), from);
                for (var to : MeasureUnits.of(dimension)) {
                    if (from.convertsTo(to)) {
                        var shown = quantity.to(to);
                        assertEquals(shown, Quantity.parse(shown.toString()));
                    }
                }
            }
        }
    }

    @Test
    void aHostileTextEitherReadsOrIsRefusedWithAMessage() {
        var random = new Random(11);
        var alphabet = "0123456789.,-+/ eEPTHMSNmMkgfl·°'\"%µΩ\u00A0\u202F\uD83D\uDE00\u0000[]()*?\\x²⁻¹";
        int refused = 0;
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder();
            random.ints(random.nextInt(20), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            try {
                var quantity = Quantity.parse(text.toString());
                assertEquals(quantity, Quantity.parse(quantity.toString()));
            } catch (IllegalArgumentException problem) {
                refused++;
                assertFalse(problem instanceof NumberFormatException, text.toString());
                assertTrue(problem.getMessage().endsWith("."), problem.getMessage());
            }
        }
        assertTrue(refused > 10_000 && refused < 20_000, "refused " + refused);
    }

    private static IllegalArgumentException problem(String text) {
        return assertThrows(IllegalArgumentException.class, () -> Quantity.parse(text));
    }
}
