// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * A unit of measurement: base value = (value + offset) × factor ÷ divisor, all exact. The divisor is there for units
 * whose factor has no finite decimal form (a second is 1/60 of the base unit minute); the offset is zero for every
 * dimension but temperature. Base units: N·m, °, m, min, Pa, l, kg, N, °C, V, A, Ω, rpm, km/h, mm², W, Hz, l/min, %.
 */
public record MeasureUnit(String symbol, Dimension dimension, BigDecimal factor, BigDecimal divisor,
        BigDecimal offset) {

    public MeasureUnit {
        Objects.requireNonNull(symbol);
        Objects.requireNonNull(dimension);
        Objects.requireNonNull(offset);
        if (factor.signum() <= 0 || divisor.signum() <= 0) {
            throw new IllegalArgumentException("The unit " + symbol + " needs a factor above zero, for example 1.");
        }
    }

    static MeasureUnit of(String symbol, Dimension dimension, String factor) {
        return of(symbol, dimension, factor, "1", "0");
    }

    static MeasureUnit of(String symbol, Dimension dimension, String factor, String divisor, String offset) {
        return new MeasureUnit(symbol, dimension, new BigDecimal(factor), new BigDecimal(divisor),
                new BigDecimal(offset));
    }

    /** Whether values can be carried over; counts of different things (starts, pieces) cannot. */
    public boolean convertsTo(MeasureUnit other) {
        return dimension == other.dimension && (dimension != Dimension.COUNT || symbol.equals(other.symbol));
    }

    /**
     * The value in another unit: exact where the result has at most 34 digits, otherwise rounded to 34.
     *
     * @throws IllegalArgumentException if the two units do not measure the same thing
     */
    public BigDecimal convert(BigDecimal value, MeasureUnit target) {
        requireConvertible(target);
        if (equals(target)) {
            return value;
        }
        var numerator = scaled(value).multiply(target.divisor);
        var quotient = numerator.divide(divisor.multiply(target.factor), MathContext.DECIMAL128);
        return plain(quotient.subtract(target.offset));
    }

    /** Compares a value in this unit with a value in the other unit, without any rounding. */
    int compare(BigDecimal value, BigDecimal otherValue, MeasureUnit other) {
        requireConvertible(other);
        return scaled(value).multiply(other.divisor).compareTo(other.scaled(otherValue).multiply(divisor));
    }

    private BigDecimal scaled(BigDecimal value) {
        return value.add(offset).multiply(factor);
    }

    private void requireConvertible(MeasureUnit target) {
        if (!convertsTo(target)) {
            throw new IllegalArgumentException(symbol + " cannot be turned into " + target.symbol + ": use a unit of "
                    + dimension.words() + ", as in " + dimension.example() + ".");
        }
    }

    private static BigDecimal plain(BigDecimal value) {
        var stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
