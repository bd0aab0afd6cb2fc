// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.wrench;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.benchlore.torque.StatedTorque;

/**
 * A torque wrench of the shop. Its range starts at the lowest marked value (ISO 6789-1:2017, 5.1.3; norbar.com).
 *
 * @param name what the shop calls it
 * @param kind what it is
 * @param lowest lowest marked value
 * @param highest highest value
 * @param due last day on which its calibration holds; empty if not recorded
 * @param usedUp whether it was used so often since its calibration that it must be calibrated again
 */
public record Wrench(String name, WrenchKind kind, StatedTorque lowest, StatedTorque highest,
        Optional<LocalDate> due, boolean usedUp) {

    public Wrench {
        Objects.requireNonNull(name);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(due);
        if (lowest.newtonMetres() >= highest.newtonMetres()) {
            throw new IllegalArgumentException("The range of " + name + " goes from " + lowest + " to " + highest
                    + ": write the lowest marked value first, for example 20 N·m to 100 N·m.");
        }
    }

    /** A wrench of which nothing is known about how often it was used. */
    public Wrench(String name, WrenchKind kind, StatedTorque lowest, StatedTorque highest, Optional<LocalDate> due) {
        this(name, kind, lowest, highest, due, false);
    }

    /** Permissible deviation of this wrench. */
    public Deviation deviation() {
        return Deviation.of(kind, highest.newtonMetres());
    }
}
