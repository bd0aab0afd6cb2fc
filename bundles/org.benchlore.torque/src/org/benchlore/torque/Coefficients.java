// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

/** The two figures of the long form: rounded as VDI 2230-1 and its tables have them, or exact for a 60° thread. */
public enum Coefficients {
    /** 0.16 P + 0.58 d2 μ, with which VDI 2230's tables are made. */
    ROUNDED(0.16, 0.58),
    /** P/2π + d2 μ/(2 cos 30°), at most 0.4 % less. */
    EXACT(1 / (2 * Math.PI), 1 / (2 * Math.cos(Math.PI / 6)));

    private final double pitch;
    private final double flank;

    Coefficients(double pitch, double flank) {
        this.pitch = pitch;
        this.flank = flank;
    }

    double pitch() {
        return pitch;
    }

    double flank() {
        return flank;
    }
}
