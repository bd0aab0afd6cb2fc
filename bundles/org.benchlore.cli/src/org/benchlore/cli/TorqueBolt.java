// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import org.benchlore.torque.answer.Answer;
import org.benchlore.torque.answer.BoltQuestion;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Calculates preload and torque of a bolt. */
@Command(name = "bolt", description = "Calculate preload and torque of a bolt.", mixinStandardHelpOptions = true,
        footer = {"", "Without friction the least to be expected is reckoned with, which gives the lowest torque."})
final class TorqueBolt extends TorqueTask {

    @Parameters(index = "0", paramLabel = "THREAD", description = "Such as M10, M10x1.25, 3/8-16 UNC.")
    private String thread;

    @Parameters(index = "1", paramLabel = "CLASS", arity = "0..1", description = "Such as 8.8, 'grade 5', A2-70.")
    private String propertyClass;

    @Mixin
    private FrictionOptions options;

    @Option(names = "--use", paramLabel = "SHARE", defaultValue = "0.9",
            description = "Share of the yield stress, 0.1 to 1 (default 0.9).")
    private String use;

    TorqueBolt(Desk desk) {
        super(desk);
    }

    @Override
    Answer answer() throws BadArgument {
        return new BoltQuestion(thread, propertyClass, options.input(), use).answer();
    }
}
