// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Amount;
import org.benchlore.plan.PlanRequest;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command that plans is told: on what, which work, where the machine stands, on which day. */
final class PlanArguments {

    @Parameters(index = "0", paramLabel = "MACHINE|UNIT", description = "Id of a machine or of a unit.")
    private String subject;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "PROCEDURE", description = "Ids of what is to be done.")
    private List<String> procedures;

    @Option(names = "--open", paramLabel = "ACCESS", description = "An access that is open now; may be repeated.")
    private List<String> open = List.of();

    @Option(names = "--done", paramLabel = "PROCEDURE", description = "A procedure that has been done; may be repeated.")
    private List<String> done = List.of();

    @Option(names = "--on", paramLabel = "DAY", description = "The day of the plan, such as 2026-11-25 (default: today).")
    private LocalDate day = LocalDate.now();

    PlanRequest request(Optional<Amount> fixedLabour) {
        return new PlanRequest(subject, procedures, open, done, day, fixedLabour);
    }
}
