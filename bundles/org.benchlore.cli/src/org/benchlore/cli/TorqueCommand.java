// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Torque: converting, calculating, judging, setting the wrench, and the order of tightening. Needs no library. */
@Command(name = "torque", description = "Convert, calculate and judge torques; set a wrench; give a tightening sequence.",
        mixinStandardHelpOptions = true,
        footer = {"", "Examples:", "  torque convert 80 ft-lb N·m", "  torque bolt M10x1.25 10.9 --friction 0.12",
            "  torque judge 45 N·m M10 8.8", "  torque wrench 80 N·m --length 400 --adapter 50 --angle 0",
            "  torque sequence circle 8 --svg flange.svg"})
final class TorqueCommand {

    private TorqueCommand() {
    }

    /** The command with everything below it. */
    static CommandLine of(Desk desk) {
        return new CommandLine(new TorqueCommand())
                .addSubcommand(new TorqueConvert(desk))
                .addSubcommand(new TorqueBolt(desk))
                .addSubcommand(new TorqueJudge(desk))
                .addSubcommand(new TorqueWrench(desk))
                .addSubcommand(new TorqueSequence(desk));
    }
}
