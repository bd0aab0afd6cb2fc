// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Phrases;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Hazard;
import org.benchlore.model.ProcedureKind;

/** What moves by itself says that hands stay out. */
final class HandsOut extends ElementRule {

    private final TradeWords words;

    private static final Phrases DEVICE = Phrases.exactly("reading unit", "diagnosis unit", "tester", "scan tool", "laptop",
            "by itself");
    private static final Phrases MOVING = Phrases.exactly("move", "moves", "turn", "engage", "crush", "pinch", "start",
            "swing", "close", "come down", "caught", "run");

    HandsOut(TradeWords words) {
        super(new About("hands-out", Severity.ERROR,
                "What moves by itself says that hands stay out",
                "An actuator that is driven by a device does not wait for a hand.",
                "Takes every teach-in to move something. Elsewhere it matches a device, a word of moving and "
                        + "a moved part in one step."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            boolean isTeachIn = subject.procedure().filter(procedure -> procedure.getKind() == ProcedureKind.TEACH_IN).isPresent();
            if (Works.hazards(work).anyMatch(hazard -> words.keepsHandsOut(subject.text(hazard)) && isOfMoving(subject, hazard))) {
                continue;
            }
            if (isTeachIn) {
                findings.add(work, "The teach-in moves parts by itself, but no hazard says 'hands out': add one before the "
                        + "first step");
                continue;
            }
            work.getSteps().stream().filter(step -> DEVICE.isIn(subject.text(step))
                    && words.drivesActuator(subject.text(step))).findFirst()
                    .ifPresent(step -> findings.add(step, "The step lets a device move an actuator, but no hazard says "
                            + "'hands out': add one"));
        }
    }

    private static boolean isOfMoving(Subject subject, Hazard hazard) {
        return MOVING.isIn(subject.text(hazard));
    }
}
