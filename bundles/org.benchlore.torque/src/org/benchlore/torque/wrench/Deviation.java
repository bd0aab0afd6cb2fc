// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;

/**
 * Permissible deviation of a hand torque tool as a share: ± 4 %; ± 6 % for screwdrivers and where the highest torque is
 * 10 N·m or less (ISO 6789-1:2017, from memory).
 *
 * @param share the share, such as 0.04
 */
public record Deviation(double share) {

    private static final double SMALL = 10;
    private static final double NARROW = 0.04;
    private static final double WIDE = 0.06;

    /**
     * The deviation of a tool.
     *
     * @param highest its highest torque, N·m
     */
    public static Deviation of(WrenchKind kind, double highest) {
        return new Deviation(kind == WrenchKind.SCREWDRIVER || highest <= SMALL ? WIDE : NARROW);
    }

    /** The band about a torque in N·m. */
    public Band around(double torque) {
        return new Band(Calculated.of(torque * (1 - share), MeasureUnits.NEWTON_METRE),
                Calculated.of(torque * (1 + share), MeasureUnits.NEWTON_METRE));
    }
}
