// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Objects;

/**
 * Torque and preload by the long form: M = F·[0.16 P + 0.58 d2 μG + μK DKm/2], and the twisting that goes with it
 * (VDI 2230-1, DIN 946; from memory, checked against 81 published pairs). Forces in N, lengths in mm, torques in N·m.
 *
 * @param thread the thread
 * @param friction friction in thread and under the head
 * @param bearing where the head rubs
 * @param coefficients rounded or exact
 */
public record LongForm(BoltThread thread, Friction friction, Bearing bearing, Coefficients coefficients) {

    private static final double MILLIMETRES = 1000;
    /** 2/√3 as VDI 2230-1 rounds it: flank angle of 30° makes friction work harder. */
    private static final double FLANK = 1.155;
    /** Shear stress of a section that twists plastically as a whole. */
    private static final double PLASTIC_TWIST = 1.5;

    public LongForm {
        Objects.requireNonNull(thread);
        Objects.requireNonNull(friction);
        Objects.requireNonNull(bearing);
        Objects.requireNonNull(coefficients);
    }

    /** With rounded coefficients, as the program calculates. */
    public LongForm(BoltThread thread, Friction friction, Bearing bearing) {
        this(thread, friction, bearing, Coefficients.ROUNDED);
    }

    /** Torque for a preload: N in, N·m out. */
    public double torque(double preload) {
        return preload * arm() / MILLIMETRES;
    }

    /** Preload for a torque: N·m in, N out. */
    public double preload(double torque) {
        return torque * MILLIMETRES / arm();
    }

    /** Torque for each newton of preload, mm. */
    private double arm() {
        return coefficients.pitch() * thread.pitch() + coefficients.flank() * thread.pitchDiameter() * friction.thread()
                + friction.head() * bearing.meanDiameter() / 2;
    }

    /** The factor K of the short form T = K·F·d that gives the same torque. */
    public double nutFactor() {
        return arm() / thread.diameter();
    }

    /** k: shear stress from twisting over tensile stress, 1.5·(d2/d0)·(P/(π d2) + 1.155 μG). */
    public double twist() {
        double d2 = thread.pitchDiameter();
        return PLASTIC_TWIST * d2 / thread.stressDiameter()
                * (thread.pitch() / (Math.PI * d2) + FLANK * friction.thread());
    }

    /** Combined stress over tensile stress, √(1 + 3 k²) (von Mises). */
    public double combined() {
        return Math.sqrt(1 + 3 * twist() * twist());
    }
}
