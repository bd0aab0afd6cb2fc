// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.List;

import org.benchlore.torque.answer.Answer;
import org.benchlore.torque.answer.JudgeQuestion;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges a stated torque. */
@Command(name = "judge", description = "Judge a stated torque for a thread and a class.", mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 usual; 1 not usual; 2 bad argument."})
final class TorqueJudge extends TorqueTask {

    @Parameters(index = "0", paramLabel = "TORQUE", description = "Such as 45.")
    private String torque;

    @Parameters(index = "1", paramLabel = "UNIT", description = "Such as N·m or lbf·ft.")
    private String unit;

    @Parameters(index = "2", paramLabel = "THREAD", description = "Such as M10, M10x1.25, 3/8-16 UNC.")
    private String thread;

    @Parameters(index = "3", paramLabel = "CLASS", arity = "0..1", description = "Such as 8.8, 'grade 5', A2-70.")
    private String propertyClass;

    @Mixin
    private FrictionOptions options;

    @Option(names = "--angle", paramLabel = "DEG", description = "An angle that follows the torque; may be repeated.")
    private List<String> angles = List.of();

    TorqueJudge(Desk desk) {
        super(desk);
    }

    @Override
    Answer answer() throws BadArgument {
        return new JudgeQuestion(torque + " " + unit, angles, thread, propertyClass, options.input()).answer();
    }
}
