// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import java.time.LocalDate;

import org.benchlore.torque.Figures;

/**
 * When a wrench must be calibrated again: after months or after so many times of use, whichever comes first.
 *
 * @param months 1 to 60
 * @param uses 1 to 100,000
 */
public record CalibrationRule(int months, int uses) {

    /** ISO 6789's default where a shop has no procedure of its own: 12 months or 5,000 (norbar.com). */
    public static final CalibrationRule DEFAULT = new CalibrationRule(12, 5000);

    private static final int MOST_MONTHS = 60;
    private static final int MOST_USES = 100_000;

    public CalibrationRule {
        Figures.within("number of months", months, 1, MOST_MONTHS, "12");
        Figures.within("number of uses", uses, 1, MOST_USES, "5000");
    }

    /** The last day on which a wrench calibrated on the given day may be used. */
    public LocalDate due(LocalDate calibrated) {
        return calibrated.plusMonths(months);
    }

    /** Whether so many uses since the last calibration are too many. */
    public boolean isWornOut(int usesSince) {
        return usesSince >= uses;
    }
}
