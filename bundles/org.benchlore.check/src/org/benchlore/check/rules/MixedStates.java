// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.List;
import java.util.Locale;

import org.benchlore.check.About;
import org.benchlore.check.ElementRule;
import org.benchlore.check.Findings;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.MachineState;

/** A work asks for one machine state of each sort. */
final class MixedStates extends ElementRule {

    private static final List<List<MachineState>> OPPOSITES = List.of(
            List.of(MachineState.BATTERY_OFF, MachineState.BATTERY_ON),
                    List.of(MachineState.BATTERY_OFF, MachineState.BATTERY_ON_SUPPORT),
            List.of(MachineState.HOT, MachineState.COLD), List.of(MachineState.PRESSURE_RELIEVED, MachineState.UNDER_PRESSURE),
            List.of(MachineState.DRAINED, MachineState.FILLED), List.of(MachineState.RAISED, MachineState.ON_WHEELS),
            List.of(MachineState.RUNNING, MachineState.STOPPED), List.of(MachineState.RAISED, MachineState.RUNNING));

    MixedStates() {
        super(new About("mixed-states", Severity.ERROR,
                "A work asks for one machine state of each sort",
                "Battery off and on, hot and cold at once cannot be had; one of them is followed, perhaps "
                        + "the wrong one."));
    }

    @Override
    public void check(Subject subject, Findings findings) {
        for (var work : subject.works()) {
            for (var pair : OPPOSITES) {
                var both = work.getStates().stream().filter(pair::contains).distinct().toList();
                if (both.size() > 1) {
                    findings.add(work, "The work asks for " + word(both.get(0)) + " and " + word(both.get(1))
                            + " at once: split it into two works, or keep one");
                }
            }
        }
    }

    private static String word(MachineState state) {
        return "'" + state.getLiteral().toLowerCase(Locale.ROOT).replace('_', ' ') + "'";
    }
}
