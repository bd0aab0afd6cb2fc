// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.math.BigDecimal;
import java.util.Objects;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.MeasureUnit;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;
import org.benchlore.measure.Wording;

/** A torque that somebody states, with the text as entered: above zero, at most 100 kN·m. */
public final class StatedTorque {

    private static final double MOST = 100_000;

    private final Quantity quantity;

    private StatedTorque(Quantity quantity) {
        this.quantity = quantity;
    }

    /**
     * Reads a torque such as {@code 45 N·m} or {@code 33 ft-lb}.
     *
     * @throws IllegalArgumentException with one plain sentence if it is none
     */
    public static StatedTorque parse(String text) {
        return of(Quantity.parse(text, Dimension.TORQUE));
    }

    /**
     * Takes over what was entered.
     *
     * @throws IllegalArgumentException if it is no torque, zero, or more than any wrench gives
     */
    public static StatedTorque of(Quantity entered) {
        if (entered.dimension() != Dimension.TORQUE) {
            throw Wording.problem(entered.text(), "is no torque", Dimension.TORQUE.example());
        }
        double newtonMetres = entered.in(MeasureUnits.NEWTON_METRE).doubleValue();
        if (newtonMetres <= 0 || newtonMetres > MOST) {
            throw Wording.problem(entered.text(), newtonMetres <= 0 ? "tightens nothing"
                    : "is more than any wrench gives", Dimension.TORQUE.example());
        }
        return new StatedTorque(entered);
    }

    /** The size in N·m. */
    public double newtonMetres() {
        return quantity.in(MeasureUnits.NEWTON_METRE).doubleValue();
    }

    /** The number as entered, without its unit. */
    public BigDecimal number() {
        return quantity.value();
    }

    /** The unit as entered. */
    public MeasureUnit unit() {
        return quantity.unit();
    }

    /** What was entered. */
    public Quantity quantity() {
        return quantity;
    }

    /** The text as entered. */
    @Override
    public String toString() {
        return quantity.text();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StatedTorque that && quantity.equals(that.quantity);
    }

    @Override
    public int hashCode() {
        return Objects.hash(quantity);
    }
}
