// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.words;

import org.benchlore.terms.WordGroups;

/**
 * What the rules look for in texts. The phrases are common practice of the trade, no source; what the library's glossary
 * and the built-in list say means the same as a whole phrase is looked for too.
 */
public final class TradeWords {

    private final Phrases undoing;
    private final Phrases bolts;
    private final Phrases opening;
    private final Phrases lines;
    private final Phrases openedLine;
    private final Phrases bleeding;
    private final Phrases teachIn;
    private final Phrases support;
    private final Phrases heavy;
    private final Phrases cleaningDry;
    private final Phrases frictionParts;
    private final Phrases dust;
    private final Phrases airLine;
    private final Phrases handsOut;
    private final Phrases driving;
    private final Phrases actuators;
    private final Phrases wheelNuts;
    private final Phrases retorque;
    private final Phrases customer;
    private final Phrases engineRuns;
    private final Phrases ignitionOn;

    /** Makes the words with what the groups say means the same. */
    public TradeWords(WordGroups groups) {
        undoing = Phrases.of(groups, "turn out", "undo", "unscrew", "unbolt", "take out", "screw out", "remove", "slacken off");
        bolts = Phrases.of(groups, "bolt", "screw", "nut", "stud");
        opening = Phrases.of(groups, "open", "crack", "crack open", "undo", "unscrew", "disconnect", "loosen");
        lines = Phrases.of(groups, "union", "hose", "pipe", "line", "banjo", "fitting", "banjo bolt");
        openedLine = Phrases.exactly("turn the union off", "turn off the union", "turn the hose off", "take the line off",
                "take the hose off", "take off the hose", "take off the line");
        bleeding = Phrases.of(groups, "bleed", "bled", "bleed screw", "vent", "purge", "prime");
        teachIn = Phrases.of(groups, "teach in", "taught in", "learn in", "learned in", "relearn", "adaptation", "basic setting");
        support = Phrases.of(groups, "support", "sling", "jack", "hoist", "crane", "prop", "axle stand", "strap",
                "cradle", "chain block", "trestle");
        heavy = Phrases.of(groups, "heavy", "heavy part", "come down", "fall", "drop", "crush");
        cleaningDry = Phrases.of(groups, "blow", "blow out", "blow off", "brush", "brush off", "sweep", "air line",
                "compressed air", "sand", "grind", "wipe", "scrape", "clean");
        frictionParts = Phrases.of(groups, "brake", "brake drum", "brake shoe", "brake pad", "brake disc", "lining",
                "clutch plate", "friction plate", "clutch housing", "clutch disc", "drum");
        dust = Phrases.of(groups, "dust", "brake dust", "lining dust", "friction dust");
        airLine = Phrases.of(groups, "air line", "compressed air", "blow", "air gun", "airline");
        handsOut = Phrases.of(groups, "hand", "finger", "keep clear", "stay clear", "stand clear", "nobody", "no one",
                "keep out", "keep away", "barrier", "limb");
        driving = Phrases.of(groups, "drive", "move", "run", "start", "cycle", "actuate", "extend");
        actuators = Phrases.of(groups, "actuator", "cylinder", "motor", "valve", "flap", "arm", "lever", "fork");
        wheelNuts = Phrases.of(groups, "wheel nut", "wheel bolt", "wheel stud", "lug nut", "road wheel");
        retorque = Phrases.of(groups, "retorque", "re torque", "tighten again", "retighten", "check the torque",
                "torque again", "tightened again");
        customer = Phrases.of(groups, "customer", "driver", "owner", "operator", "tell", "told");
        engineRuns = Phrases.of(groups, "start the engine", "run the engine", "engine run", "engine idle", "drive over",
                "drive to", "drive off", "drive forward", "let the engine");
        ignitionOn = Phrases.of(groups, "ignition on", "switch the ignition on", "switch on the ignition", "start the engine");
    }

    /** Says that bolts, screws or nuts come out, in one sentence. */
    public boolean takesBoltsOut(Text text) {
        return text.sentences().stream().anyMatch(sentence -> undoing.isAskedIn(sentence) && bolts.isIn(sentence));
    }

    /** Says that a line, hose or union is opened, in one sentence. */
    public boolean opensLine(Text text) {
        return openedLine.isAskedIn(text) || text.sentences().stream()
                .anyMatch(sentence -> opening.isAskedIn(sentence) && lines.isIn(sentence));
    }

    /** Speaks of bleeding. */
    public boolean bleeds(Text text) {
        return bleeding.isIn(text);
    }

    /** Speaks of a teach-in. */
    public boolean teachesIn(Text text) {
        return teachIn.isIn(text);
    }

    /** Says what holds the load. */
    public boolean supports(Text text) {
        return support.isAskedIn(text);
    }

    /** Speaks of a load that can fall or crush. */
    public boolean isHeavy(Text text) {
        return heavy.isIn(text);
    }

    /** Stirs up the dust of linings: cleans a part with linings, or speaks of their dust. */
    public boolean stirsUpFrictionDust(Text text) {
        return text.sentences().stream().anyMatch(sentence -> cleaningDry.isAskedIn(sentence)
                && frictionParts.isIn(sentence) || dust.isIn(sentence) && frictionParts.isIn(sentence));
    }

    /** Forbids the air line. */
    public boolean forbidsAirLine(Text text) {
        return airLine.isIn(text) && !airLine.isAskedIn(text);
    }

    /** Says that hands and people stay away. */
    public boolean keepsHandsOut(Text text) {
        return handsOut.isIn(text);
    }

    /** Lets a device move an actuator, in one sentence. */
    public boolean drivesActuator(Text text) {
        return text.sentences().stream().anyMatch(sentence -> driving.isAskedIn(sentence) && actuators.isIn(sentence));
    }

    /** Speaks of wheel nuts. */
    public boolean isOfWheelNuts(Text text) {
        return wheelNuts.isIn(text);
    }

    /** Says that the customer is told to have them tightened again. */
    public boolean tellsToRetorque(Text text) {
        return retorque.isIn(text) && customer.isIn(text);
    }

    /** Has the engine running or the machine driven. */
    public boolean runsEngine(Text text) {
        return engineRuns.isAskedIn(text);
    }

    /** Needs the battery. */
    public boolean needsBattery(Text text) {
        return ignitionOn.isAskedIn(text);
    }
}
