// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.Text;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.Condition;
import org.benchlore.model.Fastening;
import org.benchlore.model.Step;
import org.benchlore.model.Verification;

/** Wheel nuts are tightened again, and the customer is told. */
final class WheelNutsNotToldAgain extends ElementRule {

    private final TradeWords words;

    WheelNutsNotToldAgain(TradeWords words) {
        super(new About("wheel-nuts-not-told", Severity.ERROR,
                "Wheel nuts are tightened again, and the customer is told",
                "Wheel nuts settle in the first kilometres; a wheel that comes off kills."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var fastening : subject.all(Fastening.class)) {
            var step = Works.step(fastening);
            boolean isWheel = words.isOfWheelNuts(Text.of(fastening.getPlace())) || step != null
                    && words.isOfWheelNuts(subject.text(step));
            if (isWheel && !isTold(subject)) {
                findings.add(fastening, "Wheel nuts are tightened here, but nothing says that the customer is told to have "
                        + "them tightened "
                        + "again: write it as a closing condition, with the distance");
            }
        }
    }

    private boolean isTold(Subject subject) {
        return subject.all(Condition.class).stream().anyMatch(condition -> words.tellsToRetorque(Text.of(condition.getText())))
                || subject.all(Verification.class).stream().anyMatch(one -> words.tellsToRetorque(Text.of(one.getText())))
                || subject.all(Step.class).stream().anyMatch(step -> words.tellsToRetorque(subject.text(step)));
    }
}
