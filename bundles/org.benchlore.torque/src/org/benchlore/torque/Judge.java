// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.benchlore.measure.MeasureUnits;

/**
 * Judges a stated torque for a thread and a class by the share of the proof load it gives with the friction to reckon
 * with. With angles only the snug part is judged.
 */
public final class Judge {

    private final Joint least;
    private final Joint middle;
    private final Joint most;
    private final FrictionRange friction;
    private final boolean leftHanded;

    /**
     * Makes a judge for plain hexagon bolts.
     *
     * @throws IllegalArgumentException with one plain sentence if the class does not exist for the thread
     */
    public Judge(ThreadDesignation thread, PropertyClass propertyClass, FrictionRange friction) {
        this(thread, propertyClass, friction, Bearing.hexagon(thread.thread()));
    }

    /** Makes a judge for bolts with the given bearing ring; as the other. */
    public Judge(ThreadDesignation thread, PropertyClass propertyClass, FrictionRange friction, Bearing bearing) {
        this.least = joint(thread, propertyClass, friction.least(), bearing);
        this.middle = joint(thread, propertyClass, friction.middle(), bearing);
        this.most = joint(thread, propertyClass, friction.most(), bearing);
        this.friction = friction;
        this.leftHanded = thread.leftHanded();
    }

    private static Joint joint(ThreadDesignation thread, PropertyClass propertyClass, Friction friction,
            Bearing bearing) {
        return new Joint(propertyClass, new LongForm(thread.thread(), friction, bearing));
    }

    /** Judges a torque without an angle. */
    public Verdict judge(StatedTorque stated) {
        return verdict(stated, Window.TORQUE, List.of());
    }

    /**
     * Judges stages: the highest torque, or the last torque before the first angle.
     *
     * @throws IllegalArgumentException with one plain sentence if no torque stands where one is needed
     */
    public Verdict judge(List<StatedStage> stages) {
        int angle = firstAngle(stages);
        var torques = stages.subList(0, angle).stream().filter(StatedStage.ToTorque.class::isInstance)
                .map(stage -> ((StatedStage.ToTorque) stage).torque()).toList();
        if (torques.isEmpty()) {
            throw new IllegalArgumentException("An angle alone cannot be judged, since it has no torque: write the snug "
                    + "torque before it, for example 40 N·m, then 90 °.");
        }
        if (angle == stages.size()) {
            return judge(torques.stream().max(Comparator.comparingDouble(StatedTorque::newtonMetres)).orElseThrow());
        }
        return verdict(torques.get(torques.size() - 1), Window.SNUG, List.of("what the angle adds: an angle has no torque; "
                + "tighten by it, note torque and angle, and look up whether such a bolt is used once only"));
    }

    private static int firstAngle(List<StatedStage> stages) {
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i) instanceof StatedStage.ByAngle) {
                return i;
            }
        }
        return stages.size();
    }

    private Verdict verdict(StatedTorque stated, Window window, List<String> leftOut) {
        var load = middle.load(stated.newtonMetres());
        var place = window.place(load.shareOfProof());
        var slips = place == Place.USUAL || place == Place.HIGH_FOR_SNUG ? List.<Slip>of()
                : new Slips(window).find(stated, load.shareOfProof());
        var slippery = least.load(stated.newtonMetres());
        var notJudged = new ArrayList<>(leftOut);
        notJudged.addAll(Caution.notJudged(leftHanded));
        return new Verdict(stated, window == Window.SNUG, place, slips, load, slippery,
                most.load(stated.newtonMetres()), torque(window.low()), torque(window.high()),
                new Reasons(window, stated, load, slippery, friction).of(place, slips), assumptions(),
                List.copyOf(notJudged));
    }

    private Calculated torque(double shareOfProof) {
        return Calculated.of(middle.torqueAtProof(shareOfProof), MeasureUnits.NEWTON_METRE);
    }

    private List<String> assumptions() {
        var assumed = new ArrayList<String>();
        assumed.add(friction.words());
        assumed.addAll(middle.assumptions());
        return List.copyOf(assumed);
    }
}
