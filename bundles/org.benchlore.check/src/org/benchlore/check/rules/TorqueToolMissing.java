// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Fastening;
import org.benchlore.model.StageKind;
import org.benchlore.model.Tool;

/** The tools of a work reach its torques and angles. */
final class TorqueToolMissing extends NeighbourRule {

    TorqueToolMissing() {
        super(new About("torque-tool-missing", Severity.ERROR,
                "The tools of a work reach its torques and angles",
                "It is tightened with the wrench that is at hand, outside its range, where it shows nothing "
                        + "true."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        for (var work : subject.works()) {
            var tools = new ArrayList<Tool>();
            work.getTools().forEach(use -> neighbours.follow(use.getTool(), Tool.class).ifPresent(tools::add));
            Works.fastenings(work).forEach(fastening -> check(fastening, tools, findings));
        }
    }

    private static void check(Fastening fastening, List<Tool> tools, Findings findings) {
        for (var stage : fastening.getStages()) {
            var value = stage.getKind() == StageKind.TORQUE ? stage.getTorque() : stage.getKind() == StageKind.ANGLE
                    ? stage.getAngle() : null;
            if (value != null && tools.stream().noneMatch(tool -> reaches(tool, value))) {
                findings.add(fastening, "None of the tools listed reaches " + value + " at " + Works.name(fastening)
                        + ": list one whose "
                        + "range holds it");
                return;
            }
        }
    }

    private static boolean reaches(Tool tool, Quantity value) {
        var from = tool.getRangeFrom();
        var to = tool.getRangeTo();
        return from != null && to != null && from.unit().convertsTo(value.unit()) && to.unit().convertsTo(value.unit())
                && from.compareMagnitude(value) <= 0 && to.compareMagnitude(value) >= 0;
    }
}
