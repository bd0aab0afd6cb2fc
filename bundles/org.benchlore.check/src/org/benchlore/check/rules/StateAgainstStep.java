// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.check.words.TradeWords;
import org.benchlore.model.MachineState;

/** No step goes against the state the work asks for. */
final class StateAgainstStep extends ElementRule {

    private final TradeWords words;

    StateAgainstStep(TradeWords words) {
        super(new About("state-against-step", Severity.WARNING,
                "No step goes against the state the work asks for",
                "The list says stopped and the step starts the engine: who stands under the machine has read "
                        + "only the list.",
                "Matches words for a running engine, driving and the ignition."));
        this.words = words;
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            for (var step : work.getSteps()) {
                var text = subject.text(step);
                if (work.getStates().contains(MachineState.STOPPED) && words.runsEngine(text)) {
                    findings.add(step, "The work asks for 'stopped', but this step runs the engine or drives: make a work "
                            + "of its own of it");
                } else if (work.getStates().contains(MachineState.BATTERY_OFF) && words.needsBattery(text)) {
                    findings.add(step, "The work asks for 'battery off', but this step needs the battery: make a work of "
                            + "its own of it");
                }
            }
        }
    }
}
