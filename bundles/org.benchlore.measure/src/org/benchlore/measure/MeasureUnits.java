// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import static org.benchlore.measure.Dimension.*;

import java.util.List;
import java.util.Optional;

/**
 * The units known here and the look-up from what people write to the unit. Factors are exact and follow from
 * lb = 0.45359237 kg, g = 9.80665 m/s², ft = 0.3048 m, in = 0.0254 m (NIST SP 811, Appendix B).
 */
public final class MeasureUnits {
    public static final MeasureUnit NEWTON_METRE = MeasureUnit.of("N·m", TORQUE, "1");
    public static final MeasureUnit CENTINEWTON_METRE = MeasureUnit.of("cN·m", TORQUE, "0.01");
    public static final MeasureUnit DECANEWTON_METRE = MeasureUnit.of("daN·m", TORQUE, "10");
    public static final MeasureUnit KILONEWTON_METRE = MeasureUnit.of("kN·m", TORQUE, "1000");
    public static final MeasureUnit POUND_FOOT = MeasureUnit.of("lbf·ft", TORQUE, "1.3558179483314004");
    public static final MeasureUnit POUND_INCH = MeasureUnit.of("lbf·in", TORQUE, "0.1129848290276167");
    public static final MeasureUnit OUNCE_INCH = MeasureUnit.of("ozf·in", TORQUE, "0.00706155181422604375");
    public static final MeasureUnit KILOPOND_METRE = MeasureUnit.of("kgf·m", TORQUE, "9.80665");
    public static final MeasureUnit KILOPOND_CENTIMETRE = MeasureUnit.of("kgf·cm", TORQUE, "0.0980665");

    public static final MeasureUnit DEGREE = MeasureUnit.of("°", ANGLE, "1");
    public static final MeasureUnit TURN = MeasureUnit.of("turn", ANGLE, "360");

    public static final MeasureUnit METRE = MeasureUnit.of("m", LENGTH, "1");
    public static final MeasureUnit MICROMETRE = MeasureUnit.of("µm", LENGTH, "0.000001");
    public static final MeasureUnit MILLIMETRE = MeasureUnit.of("mm", LENGTH, "0.001");
    public static final MeasureUnit CENTIMETRE = MeasureUnit.of("cm", LENGTH, "0.01");
    public static final MeasureUnit KILOMETRE = MeasureUnit.of("km", LENGTH, "1000");
    public static final MeasureUnit INCH = MeasureUnit.of("in", LENGTH, "0.0254");
    public static final MeasureUnit FOOT = MeasureUnit.of("ft", LENGTH, "0.3048");
    public static final MeasureUnit MILE = MeasureUnit.of("mi", LENGTH, "1609.344");

    public static final MeasureUnit SECOND = MeasureUnit.of("s", TIME, "1", "60", "0");
    public static final MeasureUnit MINUTE = MeasureUnit.of("min", TIME, "1");
    public static final MeasureUnit HOUR = MeasureUnit.of("h", TIME, "60");
    public static final MeasureUnit DAY = MeasureUnit.of("day", TIME, "1440");

    public static final MeasureUnit PASCAL = MeasureUnit.of("Pa", PRESSURE, "1");
    public static final MeasureUnit KILOPASCAL = MeasureUnit.of("kPa", PRESSURE, "1000");
    public static final MeasureUnit MEGAPASCAL = MeasureUnit.of("MPa", PRESSURE, "1000000");
    public static final MeasureUnit BAR = MeasureUnit.of("bar", PRESSURE, "100000");
    public static final MeasureUnit MILLIBAR = MeasureUnit.of("mbar", PRESSURE, "100");
    public static final MeasureUnit PSI = MeasureUnit.of("psi", PRESSURE, "4.4482216152605", "0.00064516", "0");

    public static final MeasureUnit LITRE = MeasureUnit.of("l", VOLUME, "1");
    public static final MeasureUnit MILLILITRE = MeasureUnit.of("ml", VOLUME, "0.001");
    public static final MeasureUnit US_GALLON = MeasureUnit.of("US gal", VOLUME, "3.785411784");
    public static final MeasureUnit US_QUART = MeasureUnit.of("US qt", VOLUME, "0.946352946");
    public static final MeasureUnit IMPERIAL_GALLON = MeasureUnit.of("imp gal", VOLUME, "4.54609");

    public static final MeasureUnit KILOGRAM = MeasureUnit.of("kg", MASS, "1");
    public static final MeasureUnit GRAM = MeasureUnit.of("g", MASS, "0.001");
    public static final MeasureUnit TONNE = MeasureUnit.of("t", MASS, "1000");
    public static final MeasureUnit POUND = MeasureUnit.of("lb", MASS, "0.45359237");
    public static final MeasureUnit OUNCE = MeasureUnit.of("oz", MASS, "0.028349523125");

    public static final MeasureUnit NEWTON = MeasureUnit.of("N", FORCE, "1");
    public static final MeasureUnit DECANEWTON = MeasureUnit.of("daN", FORCE, "10");
    public static final MeasureUnit KILONEWTON = MeasureUnit.of("kN", FORCE, "1000");
    public static final MeasureUnit POUND_FORCE = MeasureUnit.of("lbf", FORCE, "4.4482216152605");
    public static final MeasureUnit KILOPOND = MeasureUnit.of("kgf", FORCE, "9.80665");

    public static final MeasureUnit CELSIUS = MeasureUnit.of("°C", TEMPERATURE, "1");
    public static final MeasureUnit FAHRENHEIT = MeasureUnit.of("°F", TEMPERATURE, "5", "9", "-32");
    public static final MeasureUnit KELVIN = MeasureUnit.of("K", TEMPERATURE, "1", "1", "-273.15");

    public static final MeasureUnit VOLT = MeasureUnit.of("V", VOLTAGE, "1");
    public static final MeasureUnit MILLIVOLT = MeasureUnit.of("mV", VOLTAGE, "0.001");
    public static final MeasureUnit AMPERE = MeasureUnit.of("A", CURRENT, "1");
    public static final MeasureUnit MILLIAMPERE = MeasureUnit.of("mA", CURRENT, "0.001");
    public static final MeasureUnit OHM = MeasureUnit.of("Ω", RESISTANCE, "1");
    public static final MeasureUnit MILLIOHM = MeasureUnit.of("mΩ", RESISTANCE, "0.001");
    public static final MeasureUnit KILOHM = MeasureUnit.of("kΩ", RESISTANCE, "1000");
    public static final MeasureUnit MEGOHM = MeasureUnit.of("MΩ", RESISTANCE, "1000000");

    public static final MeasureUnit RPM = MeasureUnit.of("rpm", ROTATION, "1");
    public static final MeasureUnit KILOMETRE_PER_HOUR = MeasureUnit.of("km/h", SPEED, "1");
    public static final MeasureUnit METRE_PER_SECOND = MeasureUnit.of("m/s", SPEED, "3.6");
    public static final MeasureUnit MILE_PER_HOUR = MeasureUnit.of("mph", SPEED, "1.609344");
    public static final MeasureUnit SQUARE_MILLIMETRE = MeasureUnit.of("mm²", AREA, "1");
    public static final MeasureUnit SQUARE_CENTIMETRE = MeasureUnit.of("cm²", AREA, "100");
    public static final MeasureUnit WATT = MeasureUnit.of("W", POWER, "1");
    public static final MeasureUnit KILOWATT = MeasureUnit.of("kW", POWER, "1000");
    public static final MeasureUnit HORSEPOWER = MeasureUnit.of("hp", POWER, "745.69987158227022");
    public static final MeasureUnit HERTZ = MeasureUnit.of("Hz", FREQUENCY, "1");
    public static final MeasureUnit KILOHERTZ = MeasureUnit.of("kHz", FREQUENCY, "1000");
    public static final MeasureUnit LITRE_PER_MINUTE = MeasureUnit.of("l/min", FLOW, "1");
    public static final MeasureUnit PERCENT = MeasureUnit.of("%", RATIO, "1");
    public static final MeasureUnit STARTS = MeasureUnit.of("starts", COUNT, "1");
    public static final MeasureUnit PIECES = MeasureUnit.of("pcs", COUNT, "1");

    private static final UnitSpellings SPELLINGS = UnitSpellings.standard();

    private MeasureUnits() {
    }

    /** The unit written as {@code spelling}, in any of the forms the trade uses; empty if there is none. */
    public static Optional<MeasureUnit> find(String spelling) {
        return SPELLINGS.find(spelling);
    }

    /**
     * The unit written as {@code spelling}.
     *
     * @throws IllegalArgumentException if no unit is written so
     */
    public static MeasureUnit get(String spelling) {
        return find(spelling).orElseThrow(() -> new IllegalArgumentException(
                "'" + Wording.shorten(spelling)
                        + "' is not a unit known here: write for example N·m, mm, min or bar."));
    }

    /** All units of a dimension, the usual ones first. */
    public static List<MeasureUnit> of(Dimension dimension) {
        return SPELLINGS.units().stream().filter(unit -> unit.dimension() == dimension).toList();
    }
}
