// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Fastening;
import org.benchlore.model.Stage;

/** Every stage of a tightening has its value. */
final class StageWithoutValue extends ElementRule {

    StageWithoutValue() {
        super(new About("stage-without-value", Severity.ERROR,
                "Every stage of a tightening has its value",
                "A stage without its torque, angle or time is left out or guessed."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var stage : subject.all(Stage.class)) {
            var missing = missing(stage);
            if (!missing.isEmpty() && stage.eContainer() instanceof Fastening fastening) {
                findings.add(stage, "Stage " + (fastening.getStages().indexOf(stage) + 1) + " of " + Works.name(fastening)
                        + " has no " + missing + ": write it, or remove the stage");
            }
        }
    }

    private static String missing(Stage stage) {
        return switch (stage.getKind()) {
            case TORQUE -> stage.getTorque() == null ? "torque" : "";
            case ANGLE, LOOSEN -> stage.getAngle() == null && stage.getTorque() == null ? "angle" : "";
            case WAIT -> stage.getWait() == null ? "time" : "";
            case NOT_RECORDED -> "kind";
        };
    }
}
