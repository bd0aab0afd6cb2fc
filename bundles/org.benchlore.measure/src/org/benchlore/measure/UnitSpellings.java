// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.benchlore.measure.MeasureUnits.*;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The written forms of every unit. Separators (spaces, points, dots, stars, hyphens) do not count. A symbol and the
 * forms in {@code exact} must match by case, so that mV is never read from MV; the forms in {@code anyCase} need not.
 */
final class UnitSpellings {
    private static final String SEPARATORS = " \t\u00A0\u2009\u202F.·⋅∙•*×-‑";

    /** Trade spellings and UCUM's; the slash is wrong, but nothing else is meant by it (common practice, no source). */
    private static final String FOOT_POUNDS = "lbf·ft, ft·lbf, lb·ft, ft·lb, lbs·ft, ft·lbs, foot pound, foot pounds, "
            + "pound foot, pound feet, lb·f·ft, lbf·foot, foot lb, foot lbs, foot lbf, pounds feet, pound force foot, "
            + "pound force feet, foot pound force, ft/lb, ft/lbs, ft/lbf, [lbf_av].[ft_i], [ft_i].[lbf_av]";
    private static final String INCH_POUNDS = "lbf·in, in·lbf, lb·in, in·lb, lbs·in, in·lbs, inch pound, inch pounds, "
            + "pound inch, pound inches, lb·f·in, inch lb, inch lbs, inch lbf, pound force inch, pound force inches, "
            + "inch pound force, in/lb, in/lbs, in/lbf, [lbf_av].[in_i], [in_i].[lbf_av]";

    private record Row(MeasureUnit unit, List<String> exact, List<String> anyCase) {
    }

    private final List<MeasureUnit> units = new ArrayList<>();
    private final Map<String, MeasureUnit> exact = new HashMap<>();
    private final Map<String, MeasureUnit> folded = new HashMap<>();

    private UnitSpellings(List<Row> rows) {
        for (var row : rows) {
            units.add(row.unit);
            put(exact, key(row.unit.symbol()), row.unit);
            row.exact.forEach(form -> put(exact, key(form), row.unit));
            row.anyCase.forEach(form -> put(folded, key(form).toLowerCase(Locale.ROOT), row.unit));
        }
    }

    static UnitSpellings standard() {
        var rows = new ArrayList<Row>();
        rows.addAll(mechanical());
        rows.addAll(lengthsAndTimes());
        rows.addAll(fluids());
        rows.addAll(weights());
        rows.addAll(electrical());
        rows.addAll(motion());
        return new UnitSpellings(rows);
    }

    List<MeasureUnit> units() {
        return List.copyOf(units);
    }

    Optional<MeasureUnit> find(String spelling) {
        if (spelling == null) {
            return Optional.empty();
        }
        var key = key(spelling);
        var unit = exact.get(key);
        return Optional.ofNullable(unit != null ? unit : folded.get(key.toLowerCase(Locale.ROOT)));
    }

    private static void put(Map<String, MeasureUnit> map, String key, MeasureUnit unit) {
        var before = map.put(key, unit);
        if (before != null && !before.equals(unit)) {
            throw new IllegalStateException("Two units are written " + key + ".");
        }
    }

    private static String key(String spelling) {
        var key = new StringBuilder(spelling.length());
        spelling.chars().filter(c -> SEPARATORS.indexOf(c) < 0).forEach(c -> key.append(plain((char) c)));
        return key.toString();
    }

    /** The look-alikes people type or paste: ordinal sign for degree, Greek mu for micro, the ohm sign for omega. */
    private static char plain(char c) {
        return switch (c) {
            case 'º', '˚' -> '°';
            case 'μ' -> 'µ';
            case '\u2126' -> 'Ω';
            default -> c;
        };
    }

    private static Row row(MeasureUnit unit, String exact, String anyCase) {
        return new Row(unit, forms(exact), forms(anyCase));
    }

    private static List<String> forms(String list) {
        return list.isEmpty() ? List.of() : List.of(list.split(", "));
    }

    private static List<Row> mechanical() {
        return List.of(
                row(NEWTON_METRE, "", "Nm, newton metre, newton metres, newton meter, newton meters"),
                row(POUND_FOOT, "", FOOT_POUNDS),
                row(POUND_INCH, "", INCH_POUNDS),
                row(KILOPOND_METRE, "", "kgf·m, kg·m, m·kg, kp·m, m·kp, m·kgf, kilopond metre, kilopond metres, "
                        + "kilopond meter, kilopond meters"),
                row(KILOPOND_CENTIMETRE, "", "kgf·cm, kg·cm, cm·kg, kp·cm, cm·kp, cm·kgf"),
                row(OUNCE_INCH, "", "ozf·in, oz·in, in·oz, in·ozf, ounce inch, ounce inches, inch ounce, "
                        + "inch ounces"),
                row(DECANEWTON_METRE, "", "daN·m"),
                row(CENTINEWTON_METRE, "", "cN·m"),
                row(KILONEWTON_METRE, "", "kN·m"),
                row(DEGREE, "", "deg, degs, degree, degrees"),
                row(TURN, "", "turn, turns, rev, revs"));
    }

    private static List<Row> lengthsAndTimes() {
        return List.of(
                row(MILLIMETRE, "MM", "millimetre, millimetres, millimeter, millimeters"),
                row(CENTIMETRE, "CM", "centimetre, centimetres, centimeter, centimeters"),
                row(METRE, "", "metre, metres, meter, meters, mtr"),
                row(KILOMETRE, "KM, Km", "kms, kilometre, kilometres, kilometer, kilometers"),
                row(MICROMETRE, "um", "micron, microns, micrometre, micrometres"),
                row(INCH, "\", ″", "in, ins, inch, inches"),
                row(FOOT, "", "ft, foot, feet"),
                row(MILE, "", "mi, mile, miles"),
                row(MINUTE, "", "min, mins, minute, minutes"),
                row(HOUR, "H", "hr, hrs, hour, hours"),
                row(SECOND, "", "sec, secs, second, seconds"),
                row(DAY, "d", "day, days"));
    }

    private static List<Row> fluids() {
        return List.of(
                row(BAR, "", "bar, bars"),
                row(KILOPASCAL, "", "kPa, kilopascal, kilopascals"),
                row(MEGAPASCAL, "N/mm², N/mm2", "megapascal, megapascals"),
                row(PSI, "", "psi, psig, lbf/in², lbf/in2, lb/in², lb/in2, lbs/in²"),
                row(MILLIBAR, "hPa", "millibar, millibars"),
                row(PASCAL, "", "pascal, pascals"),
                row(LITRE, "L, ℓ, dm³, dm3", "lt, ltr, ltrs, litre, litres, liter, liters"),
                row(MILLILITRE, "mL, ML, cc, cm³, cm3, ccm", "millilitre, millilitres, milliliter, milliliters"),
                row(US_GALLON, "", "US gal, US gallon, US gallons"),
                row(US_QUART, "", "US qt, US quart, US quarts"),
                row(IMPERIAL_GALLON, "", "imp gal, UK gal, imperial gallon, imperial gallons"),
                row(LITRE_PER_MINUTE, "", "l/min, lpm, ltr/min, litres/min, liters/min"));
    }

    private static List<Row> weights() {
        return List.of(
                row(KILOGRAM, "", "kg, kgs, kilo, kilos, kilogram, kilograms"),
                row(GRAM, "", "gram, grams, gramme, grammes"),
                row(TONNE, "", "tonne, tonnes"),
                row(POUND, "", "lb, lbs, pound, pounds"),
                row(OUNCE, "", "oz, ounce, ounces"),
                row(NEWTON, "", "newton, newtons"),
                row(KILONEWTON, "KN", "kilonewton, kilonewtons"),
                row(DECANEWTON, "", "daN"),
                row(POUND_FORCE, "", "lbf, pound force"),
                row(KILOPOND, "", "kgf, kp, kilopond, kiloponds"));
    }

    private static List<Row> electrical() {
        return List.of(
                row(CELSIUS, "C, ℃", "°C, deg C, degrees C, celsius, degrees celsius, centigrade"),
                row(FAHRENHEIT, "F, ℉", "°F, deg F, degrees F, fahrenheit, degrees fahrenheit"),
                row(KELVIN, "", "kelvin, kelvins"),
                row(VOLT, "v", "volt, volts, VDC, V DC, VAC, V AC"),
                row(MILLIVOLT, "mv", "millivolt, millivolts"),
                row(AMPERE, "", "amp, amps, ampere, amperes"),
                row(MILLIAMPERE, "ma", "milliamp, milliamps, milliampere, milliamperes"),
                row(OHM, "", "ohm, ohms"),
                row(KILOHM, "KΩ", "kohm, kohms, kilohm, kilohms, kiloohm"),
                row(MILLIOHM, "mohm, mohms", "milliohm, milliohms"),
                row(MEGOHM, "Mohm, Mohms", "megohm, megohms"));
    }

    private static List<Row> motion() {
        return List.of(
                row(RPM, "", "rpm, r/min, rev/min, revs/min, 1/min, /min, min-1, min⁻¹"),
                row(KILOMETRE_PER_HOUR, "", "km/h, kmh, kph, km/hr"),
                row(METRE_PER_SECOND, "", "metres/second, meters/second"),
                row(MILE_PER_HOUR, "", "mph, mi/h, miles/h"),
                row(SQUARE_MILLIMETRE, "mm2, sq mm", "square millimetres, square millimeters"),
                row(SQUARE_CENTIMETRE, "cm2, sq cm", "square centimetres, square centimeters"),
                row(KILOWATT, "", "kW, kilowatt, kilowatts"),
                row(WATT, "w", "watt, watts"),
                row(HORSEPOWER, "", "hp, bhp, horsepower"),
                row(HERTZ, "", "Hz, hertz"),
                row(KILOHERTZ, "", "kHz, kilohertz"),
                row(PERCENT, "", "percent, per cent, pct"),
                row(STARTS, "", "start, starts"),
                row(PIECES, "", "pc, pcs, piece, pieces, pce, pces, off, ea, each"));
    }
}
