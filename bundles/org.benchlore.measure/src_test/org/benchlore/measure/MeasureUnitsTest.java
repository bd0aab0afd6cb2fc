// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureUnitsTest {
    /** Common practice, no source; 'mkg' is an old German workshop unit (tractionavant.club, 1 mkg = 9.81 N·m). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "N·m|Nm;N.m;N*m;N m;N-m;N⋅m;N•m;NM;nm;newton metre;Newton meters",
            "lbf·ft|ft-lb;lb-ft;ft·lbf;lb.ft;ft lbs;FT-LB;ft.lbs.;foot-pounds;pound feet;lbfft",
            "lbf·in|in-lb;lb-in;in·lbf;lbf in;inch pounds;IN-LBS", "kgf·m|kgm;mkg;kpm;m-kg;kg·m;kp·m;KGM",
            "kgf·cm|kpcm;kgcm;cmkg;kg-cm", "ozf·in|oz-in;in-oz;ozf.in", "daN·m|daNm;daN.m;DANM", "cN·m|cNm", "kN·m|kNm",
            "°|deg;degrees;Degree;º;˚", "turn|turns;rev", "mm|MM;millimetres;millimeter", "cm|CM;centimetre",
            "m|metre;meters", "km|KM;kms;kilometers", "µm|um;μm;micron", "in|inch;IN;inches;\";″", "ft|feet;foot",
            "mi|miles", "min|mins;min.;MIN;minutes", "h|H;hr;hrs;hours;Hour", "s|sec;secs;seconds", "day|d;days",
            "bar|BAR;bars", "kPa|KPA;kpa", "MPa|N/mm²;N/mm2", "psi|PSI;psig;lbf/in²", "mbar|hPa;millibar",
            "Pa|pascal", "l|L;ltr;litre;liter;litres;ℓ", "ml|mL;ML;cc;cm³;cm3", "US gal|us gallons", "US qt|US quart",
            "imp gal|UK gal;imperial gallon", "l/min|L/min;lpm", "kg|KG;kgs;kilos", "g|gram;grams", "t|tonnes",
            "lb|lbs;LB;pounds", "oz|ounces", "N|newtons", "kN|KN;kilonewton", "daN|DAN", "lbf|LBF;pound-force",
            "kgf|kp;KGF", "°C|C;degC;deg C;℃;celsius;°c", "°F|F;deg F;degrees F", "K|kelvin", "V|v;volts;VDC",
            "mV|mv;millivolts", "A|amp;amps;Amperes", "mA|milliamps;ma", "Ω|ohm;Ohms;\u2126", "mΩ|mohm;milliohm",
            "kΩ|kohm;kOhm;KΩ", "MΩ|Mohm;megohm", "rpm|RPM;r/min;1/min;rev/min;min⁻¹", "km/h|kph;KM/H;kmh",
            "m/s|metres/second",
            "mph|MPH;mi/h", "mm²|mm2;sq mm", "cm²|cm2", "W|w;watts", "kW|KW;kilowatts", "hp|HP;bhp", "Hz|hz;HZ",
            "kHz|khz", "%|percent;per cent;pct", "starts|start", "pcs|pc;pieces;off;each"})
    void readsTheTradesOtherSpellings(String symbol, String spellings) {
        var unit = MeasureUnits.get(symbol);
        assertEquals(symbol, unit.symbol());
        Arrays.stream(spellings.split(";"))
                .forEach(spelling -> assertEquals(Optional.of(unit), MeasureUnits.find(spelling), spelling));
    }

    @Test
    void everyUnitIsFoundByItsOwnSymbol() {
        var units = Arrays.stream(Dimension.values()).flatMap(d -> MeasureUnits.of(d).stream()).toList();
        assertTrue(units.size() > 60);
        units.forEach(unit -> assertEquals(Optional.of(unit), MeasureUnits.find(unit.symbol())));
        assertEquals(units.size(), units.stream().map(MeasureUnit::symbol).collect(Collectors.toSet()).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"MV", "MA", "Mm", "mpa", "mPa", "mw", "MBAR", "G", "T", "S", "furlong", "", " ", "·",
        "gal"})
    void leavesUnclearAndUnknownSpellingsAlone(String spelling) {
        assertEquals(Optional.empty(), MeasureUnits.find(spelling));
    }

    @Test
    void tellsMilliFromMega() {
        assertEquals(new BigDecimal("1000000000"), MeasureUnits.get("Mohm").convert(BigDecimal.ONE,
                MeasureUnits.get("mohm")));
    }

    @Test
    void namesAnUnknownUnit() {
        var problem = assertThrows(IllegalArgumentException.class, () -> MeasureUnits.get("furlong"));
        assertEquals("'furlong' is not a unit known here: write for example N·m, mm, min or bar.",
                problem.getMessage());
    }

    @Test
    void findsNothingForNoText() {
        assertEquals(Optional.empty(), MeasureUnits.find(null));
    }
}
