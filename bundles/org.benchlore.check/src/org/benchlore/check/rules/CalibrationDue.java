// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.About;
import org.benchlore.check.Findings;
import org.benchlore.check.NeighbourRule;
import org.benchlore.check.Neighbours;
import org.benchlore.check.Severity;
import org.benchlore.check.Subject;
import org.benchlore.model.Shop;
import org.benchlore.model.Tool;
import org.benchlore.model.ToolHolding;
import org.benchlore.model.YesNo;

/** Every tool that needs it is calibrated and not overdue. */
final class CalibrationDue extends NeighbourRule {

    CalibrationDue() {
        super(new About("calibration-due", Severity.WARNING,
                "Every tool that needs it is calibrated and not overdue",
                "A wrench that was not looked at for a year can be off by more than the bolt bears."));
    }

    @Override
    public void check(Subject subject, Neighbours neighbours, Findings findings) {
        if (!(subject.top() instanceof Shop shop)) {
            return;
        }
        for (var holding : subject.all(ToolHolding.class)) {
            boolean isNeeded = neighbours.follow(holding.getTool(), Tool.class)
                    .filter(tool -> tool.getCalibrated() == YesNo.YES).isPresent();
            var reason = isNeeded ? overdue(holding, shop, neighbours.today()) : "";
            if (!reason.isEmpty()) {
                findings.add(holding, "'" + neighbours.title(holding.getTool()) + "' " + Works.plain(holding.getSerial())
                        + " " + reason
                        + ": have it calibrated and write the day, or take it off the wall");
            }
        }
    }

    private static String overdue(ToolHolding holding, Shop shop, LocalDate today) {
        var due = holding.getCalibrationDue();
        if (due == null && holding.getCalibratedOn() != null && shop.getCalibrationMonths() != null) {
            due = holding.getCalibratedOn().plusMonths(shop.getCalibrationMonths());
        }
        if (due == null) {
            return "has no day of calibration";
        }
        if (due.isBefore(today)) {
            return "was due for calibration on " + due;
        }
        return shop.getCalibrationUses() != null && holding.getUses() != null && holding.getUses() > shop.getCalibrationUses()
                ? "was used " + holding.getUses() + " times since its calibration" : "";
    }
}
