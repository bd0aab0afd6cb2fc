// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.time.LocalDate;

import org.benchlore.check.Mirror;
import org.benchlore.model.ToolHolding;

class CalibrationDueTest extends Mirror {

    CalibrationDueTest() {
        super("calibration-due", "shop.xmi",
                b -> b.get("holding-x8z9", ToolHolding.class).setCalibrationDue(LocalDate.of(2026, 11, 24)),
                "holding-x8z9",
                b -> b.get("holding-x8z9", ToolHolding.class).setCalibrationDue(LocalDate.of(2026, 11, 25)));
    }
}
