// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import si.uom.SI;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** Torque in the trade's units: factors against an independent implementation of JSR 385, spellings, round trips. */
class TorqueUnitsTest {
    private static final double STANDARD_GRAVITY = 9.80665;

    /**
     * Units put together in Indriya 2.1 (JSR 385) from its own pound, ounce, foot and inch of systems-common 2.1; standard
     * gravity is given to it, since it has no unit of that name. The force units are not, which makes it no repetition of
     * ours.
     */
    static Stream<Arguments> peers() {
        Unit<?> gravity = SI.METRE_PER_SQUARE_SECOND.multiply(STANDARD_GRAVITY);
        Unit<?> poundForce = USCustomary.POUND.multiply(gravity);
        Unit<?> kilogramForce = Units.KILOGRAM.multiply(gravity);
        Unit<?> centimetre = Units.METRE.divide(100);
        return Stream.of(Arguments.of("lbf·ft", poundForce.multiply(USCustomary.FOOT)),
                Arguments.of("lbf·in", poundForce.multiply(USCustomary.INCH)),
                Arguments.of("kgf·m", kilogramForce.multiply(Units.METRE)),
                Arguments.of("kgf·cm", kilogramForce.multiply(centimetre)),
                Arguments.of("ozf·in", USCustomary.OUNCE.multiply(gravity).multiply(USCustomary.INCH)),
                Arguments.of("N·m", Units.NEWTON.multiply(Units.METRE)));
    }

    @ParameterizedTest
    @MethodSource("peers")
    void factorsAgreeWithAnIndependentImplementation(String symbol, Unit<?> peer) throws Exception {
        var converter = peer.getConverterToAny(Units.NEWTON.multiply(Units.METRE));
        for (var value : new double[] {1, 45, 0.37, 1136}) {
            double ours = MeasureUnits.get(symbol).convert(BigDecimal.valueOf(value), MeasureUnits.NEWTON_METRE)
                    .doubleValue();
            assertEquals(converter.convert(value), ours, ours * 1e-14, symbol);
        }
    }

    @ParameterizedTest
    @MethodSource("peers")
    void factorsAgreeWithItBackToo(String symbol, Unit<?> peer) throws Exception {
        var converter = Units.NEWTON.multiply(Units.METRE).getConverterToAny(peer);
        double ours = MeasureUnits.NEWTON_METRE.convert(BigDecimal.valueOf(100), MeasureUnits.get(symbol)).doubleValue();
        assertEquals(converter.convert(100.0), ours, ours * 1e-14, symbol);
    }

    /** Common practice, no source, but UCUM's two and kp and mkg (1 mkg = 9.81 N·m, tractionavant.club). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "N·m|Nm, N m, N.m, N*m, N-m, nm, NM, newton metres, Newton-meters",
            "lbf·ft|ft-lb, ft lb, ft.lb, ftlb, FT-LBS, lb-ft, lb ft, lbft, lbf ft, ft lbf, foot-pounds, foot pounds, pound-feet, "
                    + "foot lbs, pound-force feet, ft/lb, ft/lbs, [lbf_av].[ft_i]",
            "lbf·in|in-lb, in lbs, inlb, lb-in, lb.in, lbf in, inch-pounds, inch lbs, in/lbs, [lbf_av].[in_i]",
            "kgf·m|kgf.m, kg-m, kgm, mkg, m-kg, kpm, mkp, kp.m, kilopond metre",
            "kgf·cm|kgf.cm, kg-cm, kgcm, kpcm, cmkg", "ozf·in|oz-in, ozin, in-oz, ozf in, inch-ounces, inch-ounce",
            "daN·m|daNm, daN.m", "cN·m|cNm", "kN·m|kNm"})
    void otherSpellingsAreRead(String symbol, String spellings) {
        for (var spelling : spellings.split(", ")) {
            var quantity = Quantity.parse("45 " + spelling, Dimension.TORQUE);
            assertEquals(symbol, quantity.unit().symbol(), spelling);
            assertEquals("45 " + spelling, quantity.toString());
        }
    }

    /** ISO 80000-4 (from memory): torque is in N·m, never in J, though the dimension is the same. */
    @ParameterizedTest
    @CsvSource({"45 J", "45 joule", "45 mNm", "45 MNm", "45 ft", "45 lb", "45 N", "45 N/m", "45 lbs", "45 kg"})
    void whatIsNoTorqueIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Quantity.parse(text, Dimension.TORQUE));
    }

    @Test
    void conversionsComeBack() {
        var random = new Random(41);
        var units = MeasureUnits.of(Dimension.TORQUE);
        for (int i = 0; i < 3000; i++) {
            var value = BigDecimal.valueOf(random.nextLong(1, 10_000_000), random.nextInt(5));
            var from = units.get(random.nextInt(units.size()));
            var to = units.get(random.nextInt(units.size()));
            var back = to.convert(from.convert(value, to), from);
            assertTrue(back.subtract(value).abs().compareTo(value.multiply(new BigDecimal("1e-12"))) <= 0, from + " " + to);
        }
    }

    @Test
    void conversionScalesAndKeepsTheOrder() {
        var random = new Random(43);
        var units = MeasureUnits.of(Dimension.TORQUE);
        for (int i = 0; i < 1000; i++) {
            var small = BigDecimal.valueOf(random.nextInt(1, 1000));
            var large = small.add(BigDecimal.ONE);
            var from = units.get(random.nextInt(units.size()));
            var to = units.get(random.nextInt(units.size()));
            assertTrue(from.convert(large, to).compareTo(from.convert(small, to)) > 0);
            assertEquals(10 * from.convert(small, to).doubleValue(), from.convert(small.multiply(BigDecimal.TEN), to)
                    .doubleValue(), 1e-9 * from.convert(large, to).doubleValue() * 10);
        }
    }

    /** Digits that a wrench can be set to: whole ones kept, four or as many as were entered. */
    @ParameterizedTest
    @CsvSource({"45 N·m, lbf·ft, 33.19 lbf·ft", "1136 N·m, lbf·in, 10054 lbf·in", "9 N·m, kgf·cm, 91.77 kgf·cm",
        "80 ft-lb, N·m, 108.5 N·m", "120 mkg, N·m, 1177 N·m", "2.5 kpm, N·m, 24.52 N·m", "80 ft-lb, lbf·ft, 80 ft-lb"})
    void aConvertedTorqueIsRoundedForTheHand(String from, String unit, String shown) {
        assertEquals(shown, Quantity.parse(from).to(MeasureUnits.get(unit)).toString());
    }

    @ParameterizedTest
    @CsvSource({"83.6318, 3, 83.6", "1136.4, 3, 1136", "0.16348, 3, 0.163", "90, 3, 90", "12345.6, 1, 12346", "0.5, 3, 0.5"})
    void aFigureIsRoundedToDigits(BigDecimal value, int digits, String shown) {
        assertEquals(shown, Quantity.rounded(value, digits).toPlainString());
    }

    @Test
    void refusalsQuoteShort() {
        assertEquals("", Wording.shorten(null));
        assertEquals(41, Wording.shorten("9".repeat(100)).length());
        assertEquals("'a b' is wrong: write for example c.", Wording.problem("a\nb", "is wrong", "c").getMessage());
        assertEquals(List.of("'' is wrong: write for example c."), List.of(Wording.problem(null, "is wrong", "c").getMessage()));
    }
}
