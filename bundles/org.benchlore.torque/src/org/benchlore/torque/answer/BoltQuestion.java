// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque.answer;

import java.util.stream.Stream;

import org.benchlore.measure.MeasureUnits;
import org.benchlore.torque.Calculated;
import org.benchlore.torque.Caution;
import org.benchlore.torque.Figures;
import org.benchlore.torque.Friction;
import org.benchlore.torque.FrictionRange;
import org.benchlore.torque.Joint;
import org.benchlore.torque.LongForm;
import org.benchlore.torque.PropertyClass;
import org.benchlore.torque.Tightening;
import org.benchlore.torque.TighteningMethod;

/**
 * Which preload and torque does a bolt take? Where friction is not known, the least to be expected is reckoned with,
 * since the same torque then gives the most preload: so the share of yield asked for is not exceeded unnoticed.
 *
 * @param thread such as {@code M10x1.25}
 * @param propertyClass such as {@code 8.8}; blank if it stands beside the thread
 * @param head friction and bearing ring
 * @param use share of the yield stress; blank for 0.9
 */
public record BoltQuestion(String thread, String propertyClass, HeadInput head, String use) {

    private static final double NEWTONS = 1000;
    private static final String USUAL_USE = "0.9";

    /**
     * Answers it.
     *
     * @throws WrongInput if an input cannot be used
     */
    public Answer answer() {
        var bolt = Bolt.read(thread, propertyClass);
        var range = range(bolt);
        var joint = joint(bolt, range.least());
        var tightening = joint.tighten(WrongInput.at(Field.USE,
                () -> Joint.readUse(WrongInput.isBlank(use) ? USUAL_USE : use)));
        var writer = new AnswerWriter();
        bolt.write(writer);
        result(writer, tightening);
        if (!range.isGiven()) {
            other(writer, joint(bolt, range.middle()), tightening, range.middle());
            other(writer, joint(bolt, range.most()), tightening, range.most());
        }
        scatter(writer, tightening);
        geometry(writer, joint);
        writer.assumed(Stream.concat(Stream.of(range.leastWords()), joint.assumptions().stream()).toList());
        writer.notJudged(Caution.notJudged(bolt.thread().leftHanded()));
        return writer.done(true);
    }

    private FrictionRange range(Bolt bolt) {
        var given = head.friction();
        if (given.isEmpty() && bolt.propertyClass().family() == PropertyClass.Family.STAINLESS) {
            throw new WrongInput(Field.FRICTION, "Friction of stainless steel differs too much to be assumed (0.1 with "
                    + "paste, 0.35 without): give it, for example 0.2.");
        }
        return given.map(FrictionRange::given).orElseGet(() -> FrictionRange.usual(bolt.propertyClass()));
    }

    private Joint joint(Bolt bolt, Friction friction) {
        var size = bolt.thread().thread();
        return new Joint(bolt.propertyClass(), new LongForm(size, friction, head.bearing(size)));
    }

    private static void result(AnswerWriter writer, Tightening tightening) {
        writer.main("Torque", AnswerWriter.words(tightening.torque()));
        writer.add("torque", AnswerWriter.calculated(tightening.torque(), MeasureUnits.NEWTON_METRE));
        double share = tightening.preload().in(MeasureUnits.NEWTON) / tightening.joint().proofLoad();
        writer.row("Preload", tightening.preload().show(MeasureUnits.KILONEWTON) + ": "
                + Figures.percent(tightening.use()) + " of yield with twisting, " + Figures.percent(share)
                + " of the proof load");
        writer.row("Nut factor K", Figures.show(tightening.joint().form().nutFactor()));
        writer.add("preload", AnswerWriter.calculated(tightening.preload(), MeasureUnits.KILONEWTON));
        writer.add("friction", tightening.joint().form().friction().thread());
        writer.add("headFriction", tightening.joint().form().friction().head());
        writer.add("use", tightening.use());
        writer.add("shareOfProof", share);
        writer.add("nutFactor", tightening.joint().form().nutFactor());
    }

    /** What the same torque does where friction is higher, and what it would take there. */
    private static void other(AnswerWriter writer, Joint joint, Tightening tightening, Friction friction) {
        var load = joint.load(tightening.torque().in(MeasureUnits.NEWTON_METRE));
        var there = joint.tighten(tightening.use()).torque();
        var name = Figures.plain(friction.thread());
        writer.row("If friction is " + name, "the same torque gives "
                + Calculated.of(load.preload(), MeasureUnits.NEWTON).show(MeasureUnits.KILONEWTON) + ", "
                + Figures.percent(load.shareOfYield()) + " of yield; " + Figures.show(there.in(MeasureUnits.NEWTON_METRE))
                + " N·m (" + Calculated.MARK + ") only where this friction is known");
        writer.add("shareOfYieldAtFriction" + name, load.shareOfYield());
        writer.add("torqueAtFriction" + name, AnswerWriter.calculated(there, MeasureUnits.NEWTON_METRE));
    }

    private static void scatter(AnswerWriter writer, Tightening tightening) {
        var method = TighteningMethod.WRENCH_FRICTION_ESTIMATED;
        var least = Calculated.of(method.leastPreload(tightening.preload().in(MeasureUnits.NEWTON)), MeasureUnits.NEWTON);
        writer.row("Scatter", "by " + method.words() + ", the preload may end as low as "
                + least.show(MeasureUnits.KILONEWTON) + ": most over least up to " + Figures.plain(method.mostFactor()));
        writer.add("leastPreload", AnswerWriter.calculated(least, MeasureUnits.KILONEWTON));
    }

    private static void geometry(AnswerWriter writer, Joint joint) {
        var size = joint.form().thread();
        writer.row("Pitch", Figures.show(size.pitch()) + " mm; pitch diameter "
                + Figures.plain(round(size.pitchDiameter())) + " mm, minor diameter "
                + Figures.plain(round(size.minorDiameter())) + " mm");
        writer.row("Stress area", Figures.show(size.stressArea()) + " mm²");
        writer.row("Proof load", Figures.show(joint.proofLoad() / NEWTONS) + " kN");
        writer.add("pitchMm", size.pitch());
        writer.add("pitchDiameterMm", size.pitchDiameter());
        writer.add("minorDiameterMm", size.minorDiameter());
        writer.add("stressAreaMm2", size.stressArea());
        writer.add("proofLoadKn", joint.proofLoad() / NEWTONS);
    }

    private static double round(double millimetres) {
        return Math.round(millimetres * NEWTONS) / NEWTONS;
    }
}
