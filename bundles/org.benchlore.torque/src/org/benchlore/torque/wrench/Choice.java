// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import java.time.LocalDate;

import org.benchlore.torque.Figures;

/**
 * A wrench and whether it may be used for a setting.
 *
 * @param wrench the wrench
 * @param fit whether, or why not
 * @param newtonMetres the setting, N·m
 */
public record Choice(Wrench wrench, Fit fit, double newtonMetres) {

    /** Whether a wrench may be used; the usable one first. */
    public enum Fit {
        /** Within range and calibrated. */
        FITS,
        /** Within range; nothing is recorded about its calibration. */
        CALIBRATION_NOT_RECORDED,
        /** Within range; its calibration has run out. */
        CALIBRATION_OVER,
        /** Within range; used so often since its calibration that it must be calibrated again. */
        USED_UP,
        /** The setting is below its lowest marked value. */
        BELOW_LOWEST_MARK,
        /** The setting is above its highest value. */
        ABOVE_HIGHEST
    }

    static Choice of(Wrench wrench, double newtonMetres, LocalDate today) {
        return new Choice(wrench, fit(wrench, newtonMetres, today), newtonMetres);
    }

    private static Fit fit(Wrench wrench, double newtonMetres, LocalDate today) {
        if (newtonMetres < wrench.lowest().newtonMetres()) {
            return Fit.BELOW_LOWEST_MARK;
        }
        if (newtonMetres > wrench.highest().newtonMetres()) {
            return Fit.ABOVE_HIGHEST;
        }
        if (wrench.due().isEmpty()) {
            return Fit.CALIBRATION_NOT_RECORDED;
        }
        if (today.isAfter(wrench.due().get())) {
            return Fit.CALIBRATION_OVER;
        }
        return wrench.usedUp() ? Fit.USED_UP : Fit.FITS;
    }

    /** Whether it may be used as it is. */
    public boolean fits() {
        return fit == Fit.FITS;
    }

    /** In one sentence, with the band on the fastener where it fits. */
    public String words() {
        return wrench.name() + switch (fit) {
            case FITS -> ": fits, within ± " + Figures.percent(wrench.deviation().share()) + ", calibrated until "
                    + wrench.due().orElseThrow() + ".";
            case CALIBRATION_NOT_RECORDED -> ": the range fits, but no calibration is recorded; have it calibrated or "
                    + "record the date.";
            case CALIBRATION_OVER -> ": the range fits, but its calibration ended on " + wrench.due().orElseThrow()
                    + "; have it calibrated first.";
            case USED_UP -> ": the range fits, but it was used too often since its calibration; have it calibrated first.";
            case BELOW_LOWEST_MARK -> ": too large, its lowest marked value is " + wrench.lowest() + ".";
            case ABOVE_HIGHEST -> ": too small, it ends at " + wrench.highest() + ".";
        };
    }
}
