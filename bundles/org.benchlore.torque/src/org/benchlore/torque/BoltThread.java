// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Objects;

/**
 * An external thread of 60° by its nominal size. Lengths in mm, areas in mm². Metric: ISO 724 and ISO 898-1; inch:
 * ASME B1.1, whose stress area is worked out from a slightly larger minor diameter.
 *
 * @param designation the written form, such as {@code M10×1.25} or {@code 3/8-16 UNC}
 * @param series the series
 * @param diameter nominal (major) diameter d, mm
 * @param pitch pitch P, mm
 */
public record BoltThread(String designation, ThreadSeries series, double diameter, double pitch) {

    /** 3√3/8: d2 = d − 0.649519 P. */
    private static final double TO_PITCH_DIAMETER = 3 * Math.sqrt(3) / 8;
    /** 17√3/24: d3 = d − 1.226869 P (ISO 724 and ISO 898-1, rounded root). */
    private static final double TO_METRIC_ROOT = 17 * Math.sqrt(3) / 24;
    /** 3√3/4: dr = d − 1.299038 P (ASME B1.1, as Shigley's Table 8-2 uses it). */
    private static final double TO_INCH_ROOT = 3 * Math.sqrt(3) / 4;

    public BoltThread {
        Objects.requireNonNull(designation);
        Objects.requireNonNull(series);
        if (!(pitch > 0 && diameter > 2 * pitch && diameter < 1000)) {
            throw new IllegalArgumentException("A thread of diameter " + Figures.plain(diameter) + " and pitch "
                    + Figures.plain(pitch) + " mm cannot be: write for example M10.");
        }
    }

    /** Reads a thread; as {@link ThreadDesignation#parse} but without a class or anything else beside it. */
    public static BoltThread parse(String text) {
        return ThreadDesignation.parse(text).thread();
    }

    /** Pitch diameter d2, mm. */
    public double pitchDiameter() {
        return diameter - TO_PITCH_DIAMETER * pitch;
    }

    /** Minor diameter, mm: d3 of ISO 724 for metric, dr of ASME B1.1 for inch threads. */
    public double minorDiameter() {
        return diameter - (series.isInch() ? TO_INCH_ROOT : TO_METRIC_ROOT) * pitch;
    }

    /** Diameter of the stress area: mean of pitch and minor diameter, mm. */
    public double stressDiameter() {
        return (pitchDiameter() + minorDiameter()) / 2;
    }

    /** Stress area As = π/4·((d2+d3)/2)², mm², unrounded (ISO 898-1; ASME B1.1 with dr). */
    public double stressArea() {
        return Math.PI / 4 * stressDiameter() * stressDiameter();
    }

    /** The written form. */
    @Override
    public String toString() {
        return designation;
    }
}
