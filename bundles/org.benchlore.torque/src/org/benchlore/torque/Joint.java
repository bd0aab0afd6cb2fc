// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.measure.MeasureUnits;

/**
 * A bolt of a class with its friction and bearing ring. Forces in N, torques in N·m, stresses in MPa.
 *
 * @param propertyClass the class
 * @param form thread, friction and bearing ring in the long form
 */
public record Joint(PropertyClass propertyClass, LongForm form) {

    private static final double LEAST_USE = 0.1;
    private static final String SHOULD_BE = "0.9";

    public Joint {
        Strength.of(propertyClass, form.thread());
    }

    /**
     * A plain hexagon bolt.
     *
     * @throws IllegalArgumentException with one plain sentence if the class does not exist for the thread
     */
    public static Joint of(BoltThread thread, PropertyClass propertyClass, Friction friction) {
        return new Joint(propertyClass, new LongForm(thread, friction, Bearing.hexagon(thread)));
    }

    /** Minimum strengths. */
    public Strength strength() {
        return Strength.of(propertyClass, form.thread());
    }

    /** Proof load, N: proof stress times stress area. */
    public double proofLoad() {
        return strength().proof() * form.thread().stressArea();
    }

    /**
     * Preload and torque at which tension and twisting together reach a share of the yield stress:
     * F = ν·Rp0.2·As/√(1+3k²) (VDI 2230-1, from memory).
     *
     * @param use the share ν, 0.1 to 1; 0.9 is usual
     * @throws IllegalArgumentException with one plain sentence if the share is outside
     */
    public Tightening tighten(double use) {
        Figures.within("share of yield", use, LEAST_USE, 1, SHOULD_BE);
        double preload = use * strength().yield() * form.thread().stressArea() / form.combined();
        return new Tightening(this, use, Calculated.of(preload, MeasureUnits.NEWTON),
                Calculated.of(form.torque(preload), MeasureUnits.NEWTON_METRE));
    }

    /** Reads a share of yield as {@link #tighten} takes it. */
    public static double readUse(String text) {
        return Figures.read("share of yield", text, LEAST_USE, 1, SHOULD_BE);
    }

    /** What a torque in N·m does to the bolt. */
    public Load load(double torque) {
        double preload = form.preload(torque);
        double stress = preload / form.thread().stressArea();
        var strength = strength();
        return new Load(preload, stress / strength.proof(), stress * form.combined() / strength.yield(),
                stress / strength.tensile());
    }

    /** The torque in N·m at which tension alone is a share of the proof load. */
    public double torqueAtProof(double share) {
        return form.torque(share * proofLoad());
    }

    /** What was taken for granted, one phrase each; friction is for the caller to say. */
    public List<String> assumptions() {
        var assumed = new ArrayList<String>();
        assumed.add(form.bearing().words());
        var strength = strength();
        assumed.add("minimum strengths of " + propertyClass.family().standard() + ": proof "
                + Figures.show(strength.proof()) + ", yield " + Figures.show(strength.yield()) + ", tensile "
                + Figures.show(strength.tensile()) + " MPa");
        if (!strength.remark().isEmpty()) {
            assumed.add(strength.remark());
        }
        assumed.add("shank no thinner than the thread, thread whole and clean, room temperature, no thread-forming or "
                + "self-locking drag");
        return List.copyOf(assumed);
    }
}
