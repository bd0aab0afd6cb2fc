// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Calculated and stated values, and plain figures. */
class ValuesTest {

    private static final Calculated CALCULATED = Calculated.of(75, MeasureUnits.NEWTON_METRE);

    @Test
    void everyTextOfACalculatedValueCarriesItsMark() {
        assertEquals("75 N·m (calculated, not the maker's)", CALCULATED.toString());
        assertEquals("75 N·m = 55.3 lbf·ft (calculated, not the maker's)",
                CALCULATED.show(MeasureUnits.NEWTON_METRE, MeasureUnits.POUND_FOOT));
    }

    @Test
    void noTextOfACalculatedValueReadsAsAStatedOne() {
        for (var unit : MeasureUnits.of(Dimension.TORQUE)) {
            var text = CALCULATED.show(unit);
            assertThrows(IllegalArgumentException.class, () -> StatedTorque.parse(text), text);
            assertThrows(IllegalArgumentException.class, () -> Quantity.parse(text), text);
        }
    }

    /** No constructor and no method of the two types leads from a calculated value to a stated one or to a quantity. */
    @Test
    void nothingTurnsACalculatedValueIntoAStatedOne() {
        var ways = Stream.of(StatedTorque.class, Calculated.class).flatMap(type -> Stream.<Executable>concat(
                Arrays.stream(type.getDeclaredMethods()), Arrays.stream(type.getDeclaredConstructors())))
                .filter(way -> Modifier.isPublic(way.getModifiers())).toList();
        assertTrue(ways.size() > 10);
        for (var way : ways) {
            boolean takes = List.of(way.getParameterTypes()).contains(Calculated.class)
                    || way.getDeclaringClass() == Calculated.class && !Modifier.isStatic(way.getModifiers());
            var result = way instanceof Constructor<?> made ? made.getDeclaringClass()
                    : ((Method) way).getReturnType();
            assertTrue(!takes || result != StatedTorque.class && result != Quantity.class, way.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aCalculationWithoutAValueIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> Calculated.of(value, MeasureUnits.NEWTON));
    }

    @Test
    void calculatedValuesConvert() {
        assertEquals(55.31716, CALCULATED.in(MeasureUnits.POUND_FOOT), 1e-5);
        assertEquals(75, CALCULATED.in(MeasureUnits.NEWTON_METRE));
        assertThrows(IllegalArgumentException.class, () -> CALCULATED.in(MeasureUnits.NEWTON));
    }

    @Test
    void calculatedValuesAreEqualByValueAndUnit() {
        assertEquals(CALCULATED, Calculated.of(75, MeasureUnits.NEWTON_METRE));
        assertEquals(CALCULATED.hashCode(), Calculated.of(75, MeasureUnits.NEWTON_METRE).hashCode());
        assertNotEquals(CALCULATED, Calculated.of(75, MeasureUnits.POUND_FOOT));
        assertNotEquals(CALCULATED, Calculated.of(76, MeasureUnits.NEWTON_METRE));
        assertNotEquals(CALCULATED, "75 N·m");
    }

    @Test
    void aStatedTorqueKeepsWhatWasEntered() {
        var stated = StatedTorque.parse(" 33 ft-lb ");
        assertEquals("33 ft-lb", stated.toString());
        assertEquals(MeasureUnits.POUND_FOOT, stated.unit());
        assertEquals(33, stated.number().intValueExact());
        assertEquals(44.74199, stated.newtonMetres(), 1e-5);
        assertEquals(Quantity.parse("33 ft-lb"), stated.quantity());
        assertEquals(stated, StatedTorque.of(Quantity.parse("33 ft-lb")));
        assertEquals(stated.hashCode(), StatedTorque.of(Quantity.parse("33 ft-lb")).hashCode());
        assertNotEquals(stated, StatedTorque.parse("33 lbf·ft"));
        assertNotEquals(stated, "33 ft-lb");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 N·m|tightens nothing", "100001 N·m|more than any wrench gives",
        "45 mm|is a length", "45 J|is not known here", "45|has no unit", "-45 N·m|is below zero", "45 ± 5 N·m|more than one number"})
    void whatIsNoTorqueIsRefused(String text, String wrong) {
        var message = assertThrows(IllegalArgumentException.class, () -> StatedTorque.parse(text)).getMessage();
        assertTrue(message.contains(wrong) && message.contains("45 N·m"), message);
    }

    @Test
    void theLargestTorqueIsTaken() {
        assertEquals(100_000, StatedTorque.parse("100 kN·m").newtonMetres());
        var length = Quantity.parse("45 mm");
        assertThrows(IllegalArgumentException.class, () -> StatedTorque.of(length));
    }

    @ParameterizedTest
    @CsvSource({"83.6318, 83.6", "1136.4, 1136", "0.16348, 0.163", "5.94, 5.94", "100, 100", "0.5, 0.5", "12345.6, 12346",
        "999.5, 1000", "60, 60"})
    void figuresAreShownWithThreeDigits(double value, String shown) {
        assertEquals(shown, Figures.show(value));
    }

    @ParameterizedTest
    @CsvSource({"0.12, 0.12", "' 0,12 ', 0.12", ".5, 0.5", "1, 1", "-0.0, 0"})
    void figuresAreRead(String text, double value) {
        assertEquals(value, Figures.read("figure", text, 0, 1, "0.5"), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "x", "1e3", "0x1", "NaN", "Infinity", "1.2.3", "1 2", "١", "0.12µ", "1.0000000001"})
    void whatIsNoFigureIsNamed(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> Figures.read("figure", text, 0, 9, "0.5"))
                .getMessage();
        assertEquals("'" + text.strip() + "' is no number for the figure: write for example 0.5.", message);
    }

    @ParameterizedTest
    @CsvSource({"-0.1", "1.01", "999999999"})
    void aFigureOutsideItsRangeIsNamed(String text) {
        var message = assertThrows(IllegalArgumentException.class, () -> Figures.read("figure", text, 0, 1, "0.5"))
                .getMessage();
        assertEquals("A figure of " + text + " is outside 0 to 1: write for example 0.5.", message);
    }

    @Test
    void theEndsOfARangeBelongToIt() {
        assertEquals(0, Figures.within("figure", 0, 0, 1, "0.5"));
        assertEquals(1, Figures.within("figure", 1, 0, 1, "0.5"));
        assertThrows(IllegalArgumentException.class, () -> Figures.within("figure", Double.NaN, 0, 1, "0.5"));
        assertThrows(IllegalArgumentException.class,
                () -> Figures.within("figure", Double.POSITIVE_INFINITY, 0, 1, "0.5"));
        assertThrows(IllegalArgumentException.class, () -> Figures.read("figure", null, 0, 1, "0.5"));
    }

    @Test
    void noFigureIsShownByItsName() {
        assertEquals("NaN", Figures.show(Double.NaN));
        assertEquals("NaN", Figures.plain(Double.NaN));
        assertEquals("73 %", Figures.percent(0.7349));
        assertEquals("1.25", Figures.plain(1.25));
    }

    @Test
    void hostileFiguresAreReadOrRefusedInOneSentence() {
        var random = new Random(29);
        var alphabet = "0123456789.,-+eExNaI \u0000\n\uD83D\u0661[](*+?\\%";
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            var text = new StringBuilder();
            random.ints(random.nextInt(6), 0, alphabet.length()).forEach(c -> text.append(alphabet.charAt(c)));
            try {
                double value = Figures.read("figure", text.toString(), 0, 1000, "0.5");
                assertTrue(value >= 0 && value <= 1000);
                read++;
            } catch (IllegalArgumentException problem) {
                assertTrue(!(problem instanceof NumberFormatException), text.toString());
                assertTrue(problem.getMessage().endsWith(".") && !problem.getMessage().contains("\n"), problem.getMessage());
            }
        }
        assertTrue(read > 500 && read < 15_000, "read " + read);
    }
}
