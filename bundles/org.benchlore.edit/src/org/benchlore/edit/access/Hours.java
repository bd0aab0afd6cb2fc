// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.access;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;

/**
 * Billed hours in three parts.
 *
 * @param strip to open the access, or empty if that is not known
 * @param work with the access open, or empty
 * @param refit to close it, or empty
 */
public record Hours(Optional<Quantity> strip, Optional<Quantity> work, Optional<Quantity> refit) {

    /** No hours at all. */
    public static final Hours NONE = new Hours(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Tells whether every part is known.
     *
     * @return true if nothing is missing
     */
    public boolean isWhole() {
        return strip.isPresent() && work.isPresent() && refit.isPresent();
    }

    /**
     * Adds the parts that are known.
     *
     * @param like the unit of the sum is that of this time
     * @return the sum
     */
    public Quantity sum(Quantity like) {
        return of(List.of(strip, work, refit).stream().flatMap(Optional::stream)
                .map(time -> time.in(MeasureUnits.MINUTE)).reduce(BigDecimal.ZERO, BigDecimal::add), like);
    }

    /**
     * Reckons what is left for the work.
     *
     * @param whole time of the whole job
     * @return what strip and refit leave of it; empty if one of them is not known or nothing is left
     */
    public Optional<Quantity> left(Quantity whole) {
        if (strip.isEmpty() || refit.isEmpty()) {
            return Optional.empty();
        }
        var left = whole.in(MeasureUnits.MINUTE).subtract(strip.get().in(MeasureUnits.MINUTE))
                .subtract(refit.get().in(MeasureUnits.MINUTE));
        return left.signum() <= 0 ? Optional.empty() : Optional.of(of(left, whole));
    }

    /**
     * Compares the sum with the time of the whole job.
     *
     * @param whole time of the whole job
     * @return a plain sentence
     */
    public String against(Quantity whole) {
        int more = sum(whole).compareMagnitude(whole);
        var gap = of(sum(whole).in(MeasureUnits.MINUTE).subtract(whole.in(MeasureUnits.MINUTE)).abs(), whole);
        return "Together " + sum(whole) + (more == 0 ? ", as the whole job was written down"
                : ": " + gap + (more > 0 ? " more" : " less") + " than the " + whole + " of the whole job");
    }

    private static Quantity of(BigDecimal minutes, Quantity like) {
        var exact = Quantity.of(minutes, MeasureUnits.MINUTE).to(like.unit());
        return exact.in(MeasureUnits.MINUTE).compareTo(minutes) == 0 ? plain(exact)
                : plain(Quantity.of(minutes, MeasureUnits.MINUTE));
    }

    private static Quantity plain(Quantity quantity) {
        var value = quantity.value().stripTrailingZeros();
        return Quantity.of(value.scale() < 0 ? value.setScale(0) : value, quantity.unit());
    }
}
