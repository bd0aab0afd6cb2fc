// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.ArrayList;
import java.util.List;

/** Says in sentences why a torque lies where it lies. */
final class Reasons {

    private final Window window;
    private final StatedTorque stated;
    private final Load load;
    private final Load slippery;
    private final FrictionRange friction;

    Reasons(Window window, StatedTorque stated, Load load, Load slippery, FrictionRange friction) {
        this.window = window;
        this.stated = stated;
        this.load = load;
        this.slippery = slippery;
        this.friction = friction;
    }

    List<String> of(Place place, List<Slip> slips) {
        var reasons = new ArrayList<String>();
        reasons.add(stated + " loads the bolt to " + Figures.percent(load.shareOfProof()) + " of its proof load, and with "
                + "twisting to " + Figures.percent(load.shareOfYield()) + " of yield; usual "
                + (window == Window.SNUG ? "before an angle " : "") + "is " + Figures.percent(window.low()) + " to "
                + Figures.percent(window.high()) + " of proof.");
        slips.forEach(slip -> reasons.add(sentence(slip)));
        more(place, reasons);
        return List.copyOf(reasons);
    }

    private static String sentence(Slip slip) {
        return Character.toUpperCase(slip.words().charAt(0)) + slip.words().substring(1) + ": that would be "
                + Figures.show(slip.factor()) + " times as much, " + Figures.percent(slip.shareOfProof())
                + " of proof. Look at the source again; this is a guess.";
    }

    private void more(Place place, List<String> reasons) {
        switch (place) {
            case BELOW -> reasons.add("A maker may want less than usual for a soft joint, a weak female thread or a "
                    + "locating screw: then the maker's figure stands.");
            case ABOVE_PROOF -> reasons.add("Do not tighten to it before it is confirmed"
                    + (load.shareOfTensile() > 1 ? ": with this friction the bolt would break."
                            : ": the bolt would stretch for good."));
            case HIGH_FOR_SNUG -> reasons.add("Look whether torque and angle belong together, or are two ways to "
                    + "tighten.");
            case USUAL -> {
                if (window == Window.TORQUE && !friction.isGiven() && slippery.shareOfProof() > 1) {
                    reasons.add("If it is as slippery as " + friction.least() + ", it is "
                            + Figures.percent(slippery.shareOfProof()) + " of proof: do not oil or grease unless "
                            + "the maker says so.");
                }
            }
        }
    }
}
