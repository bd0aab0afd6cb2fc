// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import org.benchlore.torque.answer.HeadInput;

import picocli.CommandLine.Option;

/** Friction, alike or apart for thread and head, and the ring on which the head rubs. */
final class FrictionOptions {

    @Option(names = "--friction", paramLabel = "MU", description = "Friction in the thread and under the head, such as 0.12.")
    private String both;

    @Option(names = "--thread-friction", paramLabel = "MU", description = "Friction in the thread alone.")
    private String thread;

    @Option(names = "--head-friction", paramLabel = "MU", description = "Friction under head or nut alone.")
    private String head;

    @Option(names = "--bearing", paramLabel = "OUTER,HOLE",
            description = "Ring on which the head rubs, mm, such as 14.63,11 (default: hexagon head).")
    private String bearing;

    /** What was given; an option with nothing in it is a mistake, not one left out. */
    HeadInput input() throws BadArgument {
        if (both != null && (thread != null || head != null)) {
            throw new BadArgument("--friction stands for both: leave it out beside --thread-friction and "
                    + "--head-friction, for example --thread-friction 0.12 --head-friction 0.10.");
        }
        if ((thread == null) != (head == null)) {
            throw new BadArgument("--thread-friction and --head-friction go together: write for example "
                    + "--thread-friction 0.12 --head-friction 0.10, or --friction 0.12.");
        }
        return new HeadInput(word("--friction", both == null ? thread : both), word("--head-friction", head),
                word("--bearing", bearing));
    }

    private static String word(String option, String text) throws BadArgument {
        if (text != null && text.isBlank()) {
            throw new BadArgument(option + " has nothing in it: write a value or leave the option out.");
        }
        return text == null ? "" : text;
    }
}
