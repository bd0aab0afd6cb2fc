// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Collectors;

import org.benchlore.measure.MeasureUnit;

/**
 * A value that was worked out here. It is a type of its own, gives no {@code Quantity} and no text without its mark,
 * and no text of it reads as a stated torque: so it cannot become one by itself.
 */
public final class Calculated {

    /** The mark that every text of a calculated value carries. */
    public static final String MARK = "calculated, not the maker's";

    private final double value;
    private final MeasureUnit unit;

    private Calculated(double value, MeasureUnit unit) {
        this.value = value;
        this.unit = unit;
    }

    /**
     * Marks a value as calculated.
     *
     * @throws IllegalArgumentException if it is not a finite number above zero
     */
    public static Calculated of(double value, MeasureUnit unit) {
        Objects.requireNonNull(unit);
        if (!Double.isFinite(value) || value <= 0) {
            throw new IllegalArgumentException("The calculation gives no value above zero: check the figures entered.");
        }
        return new Calculated(value, unit);
    }

    /**
     * The bare number in a unit, for further calculation and for JSON beside a mark.
     *
     * @throws IllegalArgumentException if the unit measures something else
     */
    public double in(MeasureUnit target) {
        return target.equals(unit) ? value : unit.convert(BigDecimal.valueOf(value), target).doubleValue();
    }

    /**
     * The value in one or more units with its mark: {@code 75 N·m = 55.3 lbf·ft (calculated, not the maker's)}.
     *
     * @throws IllegalArgumentException if a unit measures something else
     */
    public String show(MeasureUnit... units) {
        return Arrays.stream(units).map(each -> Figures.show(in(each)) + " " + each.symbol())
                .collect(Collectors.joining(" = ")) + " (" + MARK + ")";
    }

    /** The value in its own unit with its mark. */
    @Override
    public String toString() {
        return show(unit);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Calculated that && value == that.value && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, unit);
    }
}
