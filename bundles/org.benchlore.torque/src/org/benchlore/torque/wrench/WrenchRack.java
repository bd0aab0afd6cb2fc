// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;

/**
 * The shop's wrenches.
 *
 * @param wrenches in any order
 */
public record WrenchRack(List<Wrench> wrenches) {

    public WrenchRack {
        wrenches = List.copyOf(wrenches);
    }

    /**
     * Every wrench with whether it may be used for a setting: first those that may, of them first the one with the
     * smallest highest value, since its scale is the finest (common practice, no source).
     *
     * @param setting a torque
     * @param today the day of use
     */
    public List<Choice> choose(Calculated setting, LocalDate today) {
        return choose(setting.in(MeasureUnits.NEWTON_METRE), today);
    }

    /** As the other, for a torque in N·m. */
    public List<Choice> choose(double newtonMetres, LocalDate today) {
        return wrenches.stream().map(wrench -> Choice.of(wrench, newtonMetres, today))
                .sorted(Comparator.comparing(Choice::fit)
                        .thenComparingDouble(choice -> choice.wrench().highest().newtonMetres())
                        .thenComparing(choice -> choice.wrench().name())).toList();
    }
}
