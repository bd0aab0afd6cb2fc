// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.LinkedHashSet;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.ToolUse;
import org.benchlore.store.Row;

/** A tool that a step needs stands in the tools list. */
final class ToolNotListed extends NeighbourRule {

    ToolNotListed() {
        super(new About("tool-not-listed", Severity.ERROR,
                "A tool that a step needs stands in the tools list",
                "The machine is open and the special tool is in the other hall."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var work : subject.works()) {
            var listed = Listed.paths(work.getTools().stream().map(ToolUse::getTool).filter(tool -> tool != null).toList(),
                    neighbours);
            for (var step : work.getSteps()) {
                var needed = new LinkedHashSet<Address>(Listed.named(subject, step, Kind.TOOL));
                step.getMeasurements().forEach(one -> neighbours.addressOf(one.getTool()).ifPresent(needed::add));
                needed.stream().filter(tool -> !listed.contains(tool.path())).forEach(tool -> findings.add(step,
                        "The step needs '" + neighbours.facts().byId(tool.id()).map(Row::title).orElse(tool.id())
                                + "', but the tools do not list it: add it", "Add it to the tools",
                        (session, element) -> Adding.tool(session, element, tool)));
            }
        }
    }
}
