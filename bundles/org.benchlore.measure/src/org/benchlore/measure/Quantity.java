// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A value with its unit and the text as entered, which {@link #toString()} returns and {@link #parse(String)} reads
 * back. Equality is by all three, so 1 h and 60 min differ; compare sizes with {@link #compareMagnitude}.
 */
public record Quantity(BigDecimal value, MeasureUnit unit, String text) {
    private static final int FEWEST_DIGITS = 4;
    private static final int MOST_DIGITS = 8;
    private static final int MOST_DECIMALS = 20;

    public Quantity {
        Objects.requireNonNull(value);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(text);
    }

    /**
     * Reads a quantity such as {@code 45 N·m}, {@code 12,5 mm}, {@code 1 h 30 min}, {@code PT1H30M}, {@code 1/2 in}.
     *
     * @throws IllegalArgumentException with one plain sentence saying what is wrong and what is right
     */
    public static Quantity parse(String text) {
        return new QuantityReader(null).read(text);
    }

    /**
     * Reads a quantity of the expected dimension.
     *
     * @throws IllegalArgumentException as {@link #parse(String)}, and if it measures something else
     */
    public static Quantity parse(String text, Dimension expected) {
        var quantity = new QuantityReader(expected).read(text);
        if (quantity.dimension() != expected) {
            throw Wording.problem(quantity.text, "is " + quantity.dimension().words() + ", but " + expected.words()
                    + " belongs here", expected.example());
        }
        return quantity;
    }

    /**
     * A computed value with its text: decimal point, the unit's symbol, rounded only beyond 20 decimals.
     *
     * @throws IllegalArgumentException if the value makes no sense in this unit or is too large to write
     */
    public static Quantity of(BigDecimal value, MeasureUnit unit) {
        var kept = value.scale() > MOST_DECIMALS ? value.setScale(MOST_DECIMALS, RoundingMode.HALF_UP) : value;
        return parse(kept.toPlainString() + " " + unit.symbol(), unit.dimension());
    }

    /**
     * A computed value rounded for display: whole digits are kept, and four digits in all.
     *
     * @throws IllegalArgumentException as {@link #of}
     */
    public static Quantity rounded(BigDecimal value, MeasureUnit unit) {
        return of(round(value, FEWEST_DIGITS), unit);
    }

    /**
     * Rounds a figure for display, half up: whole digits are kept, and as many digits in all as asked for.
     *
     * @param digits digits in all, 1 or more
     */
    public static BigDecimal rounded(BigDecimal value, int digits) {
        return round(value, digits);
    }

    /** What it measures. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /**
     * The value in another unit, unrounded (to 34 digits where it has no end).
     *
     * @throws IllegalArgumentException if that unit measures something else
     */
    public BigDecimal in(MeasureUnit target) {
        return unit.convert(value, target);
    }

    /**
     * The same quantity in another unit for display: whole digits are kept, and as many digits in all as were
     * entered, but at least four and at most eight. The same unit gives the quantity itself.
     *
     * @throws IllegalArgumentException if that unit measures something else
     */
    public Quantity to(MeasureUnit target) {
        if (unit.equals(target)) {
            return this;
        }
        int digits = Math.max(FEWEST_DIGITS, Math.min(MOST_DIGITS, value.precision()));
        return of(round(in(target), digits), target);
    }

    /**
     * Compares sizes exactly, whatever the units: negative if this is the smaller one.
     *
     * @throws IllegalArgumentException if the other measures something else
     */
    public int compareMagnitude(Quantity other) {
        return unit.compare(value, other.value, other.unit);
    }

    /**
     * A time in whole minutes, halves rounded up.
     *
     * @throws IllegalArgumentException if this is not a time
     */
    public long minutes() {
        return in(MeasureUnits.MINUTE).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    /** The text as entered, trimmed. */
    @Override
    public String toString() {
        return text;
    }

    private static BigDecimal round(BigDecimal exact, int digits) {
        int whole = exact.precision() - exact.scale();
        var shown = exact.round(new MathContext(Math.max(digits, whole), RoundingMode.HALF_UP)).stripTrailingZeros();
        return shown.scale() < 0 ? shown.setScale(0) : shown;
    }
}
