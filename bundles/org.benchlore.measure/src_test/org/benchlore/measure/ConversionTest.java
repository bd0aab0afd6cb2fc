// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.api.Test;

class ConversionTest {
    /** Printed values of NIST SP 811, Appendix B.8, as far as they are printed. */
    @ParameterizedTest
    @CsvSource({
            "1 lbf·ft, N·m, 1.355818", "1 lbf·in, N·m, 0.1129848", "1 kgf·m, N·m, 9.80665",
            "1 ozf·in, N·m, 0.007061552",
            "1 lbf, N, 4.448222"})
    void agreesWithThePrintedConversionFactor(String from, String unit, BigDecimal printed) {
        var exact = Quantity.parse(from).in(MeasureUnits.get(unit));
        assertEquals(printed, exact.round(new MathContext(printed.precision())));
    }

    /**
     * Exact: lb = 0.45359237 kg, g = 9.80665 m/s², ft = 0.3048 m, in = 0.0254 m (NIST SP 811 App. B.8 and B.9, from
     * memory), multiplied out.
     */
    @ParameterizedTest
    @CsvSource({
            "1 lbf·ft, N·m, 1.3558179483314004", "1 lbf·in, N·m, 0.1129848290276167", "1 kgf·m, N·m, 9.80665",
            "1 kgf·cm, N·m, 0.0980665", "1 ozf·in, N·m, 0.00706155181422604375", "1 lbf, N, 4.4482216152605",
            "1 daN·m, N·m, 10", "1 kN·m, N·m, 1000", "1 in, mm, 25.4", "1 ft, mm, 304.8", "1 mi, km, 1.609344",
            "1 lb, kg, 0.45359237", "1 oz, g, 28.349523125", "1 h, s, 3600", "90 s, min, 1.5", "1 day, h, 24",
            "1 bar, kPa, 100", "1 MPa, bar, 10", "1 imp gal, l, 4.54609", "1 US gal, l, 3.785411784",
            "1 mph, km/h, 1.609344", "36 km/h, m/s, 10", "1 turn, °, 360", "4.7 kΩ, Ω, 4700", "1 V, mV, 1000"})
    void convertsExactly(String from, String unit, BigDecimal exact) {
        assertEquals(exact, Quantity.parse(from).in(MeasureUnits.get(unit)));
    }

    /** Multiplied out from the factors above; inverses to 15 digits. */
    @ParameterizedTest
    @CsvSource({
            "100 N·m, lbf·ft, 73.7562", "100 N·m, lbf·in, 885.0746", "100 N·m, kgf·m, 10.19716",
            "100 N·m, kgf·cm, 1019.716", "100 N·m, ozf·in, 14161.19", "75 lbf·ft, N·m, 101.68635",
            "89 lbf·in, N·m, 10.05565", "4.5 kgf·m, N·m, 44.129925", "120 kgf·cm, N·m, 11.76798",
            "250 ozf·in, N·m, 1.765388", "1 N·m, lbf·ft, 0.737562149277265", "1 N·m, lbf·in, 8.85074579132718",
            "1 N·m, kgf·m, 0.101971621297793", "1 N·m, ozf·in, 141.611932661235",
            "1 psi, kPa, 6.894757293168361"})
    void agreesWithWorkedExamples(String from, String unit, BigDecimal worked) {
        var exact = Quantity.parse(from).in(MeasureUnits.get(unit));
        assertEquals(worked, exact.round(new MathContext(worked.precision())));
    }

    /** accu.co.uk, "Basic Conversion Factors": 8.8507 lbf·in and 141.612 ozf·in to the newton metre. */
    @ParameterizedTest
    @CsvSource({"lbf·in, 8.8507", "ozf·in, 141.612"})
    void agreesWithAFastenerSuppliersTable(String unit, BigDecimal printed) {
        var exact = Quantity.parse("1 N·m").in(MeasureUnits.get(unit));
        assertEquals(printed, exact.round(new MathContext(printed.precision())));
    }

    /** Identities of the definitions. */
    @ParameterizedTest
    @CsvSource({"1 lbf·ft, 12 lbf·in", "1 lbf·ft, 192 ozf·in", "1 kgf·m, 100 kgf·cm", "32 °F, 0 °C", "212 °F, 100 °C",
            "-40 °F, -40 °C", "273.15 K, 0 °C", "1/2 in, 12.7 mm", "1 h 30 min, 90 min"})
    void findsEqualMagnitudes(String one, String other) {
        assertEquals(0, Quantity.parse(one).compareMagnitude(Quantity.parse(other)));
    }

    @ParameterizedTest
    @CsvSource({"1 lbf·ft, 1.3558179483314005 N·m", "1 s, 0.01666666666666666667 min", "80 °C, 177 °F",
            "999 g, 1 kg", "-5 °C, 0 °C"})
    void tellsTheSmallerFromTheLargerWithoutRounding(String smaller, String larger) {
        assertTrue(Quantity.parse(smaller).compareMagnitude(Quantity.parse(larger)) < 0);
    }

    /** From memory: the fixed points of water and body heat. */
    @ParameterizedTest
    @CsvSource({"100 °C, °F, 212", "0 °C, °F, 32", "37 °C, °F, 98.6", "0 °C, K, 273.15", "-40 °F, K, 233.15"})
    void convertsTemperaturesWithTheirOffset(String from, String unit, BigDecimal expected) {
        assertEquals(expected, Quantity.parse(from).in(MeasureUnits.get(unit)));
    }

    @ParameterizedTest
    @CsvSource({"45 N·m, lbf·ft, 33.19 lbf·ft", "100 N·m, ozf·in, 14161 ozf·in", "9 N·m, kgf·m, 0.9177 kgf·m",
            "12 mm, in, 0.4724 in", "101.325 kPa, bar, 1.01325 bar", "90 min, h, 1.5 h", "2 h, min, 120 min",
            "80 °C, °F, 176 °F"})
    void roundsForDisplay(String from, String unit, String shown) {
        assertEquals(shown, Quantity.parse(from).to(MeasureUnits.get(unit)).toString());
    }

    @Test
    void keepsTheTextWhenTheUnitStays() {
        var quantity = Quantity.parse("45 Nm");
        assertEquals(quantity, quantity.to(MeasureUnits.NEWTON_METRE));
    }

    @Test
    void roundsAComputedValueToFourDigits() {
        assertEquals("10.06 N·m", Quantity.rounded(new BigDecimal("10.05565"), MeasureUnits.NEWTON_METRE).text());
    }

    @Test
    void writesAComputedValueWithManyDecimals() {
        var third = Quantity.parse("1 min").in(MeasureUnits.DAY);
        assertEquals("0.00069444444444444444 day", Quantity.of(third, MeasureUnits.DAY).text());
    }

    @ParameterizedTest
    @CsvSource({"45 N·m, mm", "400 starts, pcs", "1 h, km", "5 V, A"})
    void refusesToConvertBetweenDifferentThings(String from, String unit) {
        var quantity = Quantity.parse(from);
        var target = MeasureUnits.get(unit);
        var problem = assertThrows(IllegalArgumentException.class, () -> quantity.in(target));
        assertTrue(problem.getMessage().contains("cannot be turned into"), problem.getMessage());
    }

    @Test
    void refusesToCompareDifferentThings() {
        var time = Quantity.parse("1 h");
        var length = Quantity.parse("1 km");
        assertThrows(IllegalArgumentException.class, () -> time.compareMagnitude(length));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitConvertsThereAndBack(Dimension dimension) {
        var value = new BigDecimal("12.75");
        for (var from : MeasureUnits.of(dimension)) {
            for (var to : MeasureUnits.of(dimension)) {
                if (from.convertsTo(to)) {
                    var back = to.convert(from.convert(value, to), from);
                    assertTrue(back.subtract(value).abs().compareTo(new BigDecimal("1e-20")) < 0, from + " " + to);
                }
            }
        }
    }

    @Test
    void everyDimensionHasUnitsAndAValidExample() {
        Arrays.stream(Dimension.values()).forEach(dimension -> {
            assertTrue(MeasureUnits.of(dimension).size() >= 1, dimension.name());
            assertEquals(dimension, Quantity.parse(dimension.example(), dimension).dimension());
        });
    }
}
