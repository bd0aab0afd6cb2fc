// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import org.benchlore.torque.answer.Answer;
import org.benchlore.torque.answer.ConvertQuestion;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Converts a torque to another unit. */
@Command(name = "convert", description = "Convert a torque to another unit.", mixinStandardHelpOptions = true)
final class TorqueConvert extends TorqueTask {

    @Parameters(index = "0", paramLabel = "VALUE", description = "Such as 80 or 12.5.")
    private String value;

    @Parameters(index = "1", paramLabel = "UNIT", description = "Such as N·m, lbf·ft, ft-lb, kgf·m.")
    private String unit;

    @Parameters(index = "2", paramLabel = "TO_UNIT", description = "The unit wanted.")
    private String target;

    TorqueConvert(Desk desk) {
        super(desk);
    }

    @Override
    Answer answer() throws BadArgument {
        if (target.isBlank()) {
            throw new BadArgument("No unit is wanted: write for example lbf·ft.");
        }
        return new ConvertQuestion(value + " " + unit, target).answer();
    }
}
