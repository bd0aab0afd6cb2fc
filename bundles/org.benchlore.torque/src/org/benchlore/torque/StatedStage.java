// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Objects;

import org.benchlore.measure.Dimension;
import org.benchlore.measure.MeasureUnits;
import org.benchlore.measure.Quantity;
import org.benchlore.measure.Wording;

/** One stage of a tightening as somebody states it. An angle has no torque, and nothing here makes one of it. */
public sealed interface StatedStage {

    /**
     * To a torque.
     *
     * @param torque the torque
     */
    record ToTorque(StatedTorque torque) implements StatedStage {
        public ToTorque {
            Objects.requireNonNull(torque);
        }
    }

    /**
     * On by an angle.
     *
     * @param angle above 0°, at most 3 turns
     */
    record ByAngle(Quantity angle) implements StatedStage {
        private static final double MOST = 1080;

        public ByAngle {
            if (angle.dimension() != Dimension.ANGLE) {
                throw Wording.problem(angle.text(), "is no angle", Dimension.ANGLE.example());
            }
            double degrees = angle.in(MeasureUnits.DEGREE).doubleValue();
            if (degrees <= 0 || degrees > MOST) {
                throw Wording.problem(angle.text(), "is no angle to tighten by (above 0, at most 1080 °)",
                        Dimension.ANGLE.example());
            }
        }

        /** Reads an angle such as {@code 90 °} or {@code 90 deg}; a bare number is in degrees. */
        public static ByAngle parse(String text) {
            var trimmed = text == null ? "" : text.strip();
            return new ByAngle(Quantity.parse(trimmed.matches("[0-9.,]+") ? trimmed + " °" : trimmed,
                    Dimension.ANGLE));
        }
    }
}
