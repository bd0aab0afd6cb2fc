// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.benchlore.measure.MeasureUnit;
import org.benchlore.measure.MeasureUnits;

/** Looks for a unit or a decimal point that went wrong: other readings of the same digits that would be usual. */
final class Slips {

    private static final List<MeasureUnit> UNITS = List.of(MeasureUnits.NEWTON_METRE, MeasureUnits.POUND_FOOT,
            MeasureUnits.POUND_INCH, MeasureUnits.KILOPOND_METRE, MeasureUnits.KILOPOND_CENTIMETRE);
    private static final double TEN = 10;

    private final Window window;

    Slips(Window window) {
        this.window = window;
    }

    /** The readings that fit, the likeliest first: the nearest to the middle of what is usual. */
    List<Slip> find(StatedTorque stated, double shareOfProof) {
        var all = new ArrayList<Slip>();
        for (var unit : UNITS) {
            if (!unit.equals(stated.unit())) {
                double factor = unit.convert(BigDecimal.ONE, stated.unit()).doubleValue();
                all.add(new Slip("the unit may be " + unit.symbol() + ", not " + stated.unit().symbol(), factor,
                        factor * shareOfProof));
            }
        }
        all.add(new Slip("the decimal point may be one place too far left", TEN, TEN * shareOfProof));
        all.add(new Slip("the decimal point may be one place too far right", 1 / TEN, shareOfProof / TEN));
        return all.stream().filter(slip -> window.holds(slip.shareOfProof()))
                .sorted(Comparator.comparingDouble(this::distance)).toList();
    }

    private double distance(Slip slip) {
        return Math.abs(Math.log(slip.shareOfProof() / window.middle()));
    }
}
