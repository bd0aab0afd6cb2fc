// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Figure;
import org.benchlore.plan.search.PlanException;
import org.benchlore.workshop.OpenLibrary;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What both 'adding' and 'sheet' are told: where the machine stands, how long it is kept, which figures are others. */
final class AddingTask {

    @Mixin
    private PlanArguments arguments;

    @Option(names = "--keep", paramLabel = "YEARS", description = "How many years it will be kept (default: what its page says).")
    private Integer keep;

    @Option(names = "--assume", paramLabel = "PROCEDURE:FIGURE=VALUE",
            description = "Another figure, such as renew-pto-actuator:day-out=350; may be repeated.")
    private List<String> assumed = List.of();

    Adding adding(OpenLibrary opened) throws BadArgument {
        if (keep != null && keep < 1) {
            throw new BadArgument("It is kept for " + keep + " years? Give 1 or more with --keep.");
        }
        try {
            var adding = opened.adder().adding(arguments.request(Optional.empty()), keep == null ? OptionalInt.empty() : OptionalInt.of(keep),
                    opened.countingRules());
            for (var one : assumed) {
                adding = assume(adding, one);
            }
            return adding;
        } catch (PlanException e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private static Adding assume(Adding adding, String text) throws BadArgument {
        var parts = text.split("[:=]", -1);
        if (parts.length != 3) {
            throw new BadArgument("'" + text + "' is no figure: write PROCEDURE:FIGURE=VALUE.");
        }
        if (adding.proposal(parts[0]).isEmpty()) {
            throw new BadArgument("'" + parts[0] + "' is not among what could be added; 'adding' without --assume lists it.");
        }
        var figure = Arrays.stream(Figure.values()).filter(it -> it.word().equals(parts[1])).findFirst()
                .orElseThrow(() -> new BadArgument("There is no figure '" + parts[1] + "'; there are "
                        + String.join(", ", Arrays.stream(Figure.values()).map(Figure::word).toList())));
        try {
            var value = new BigDecimal(parts[2]);
            return adding.change(parts[0], it -> it.with(figure, value));
        } catch (NumberFormatException e) {
            throw new BadArgument("'" + parts[2] + "' is no number: write it with a point, such as 350 or 7.5.");
        } catch (IllegalArgumentException e) {
            throw new BadArgument(e.getMessage());
        }
    }
}
