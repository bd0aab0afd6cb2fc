// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.measure.Amount;

/**
 * What is to be planned.
 *
 * @param subject id of a machine or a unit
 * @param procedures ids of the procedures to be done
 * @param open ids of accesses that are open now
 * @param done ids of procedures that have been done
 * @param today the day of the plan; work begins on the next working day
 * @param fixedLabour price agreed for the labour of the whole job, without tax, instead of time
 */
public record PlanRequest(String subject, List<String> procedures, List<String> open, List<String> done,
        LocalDate today, Optional<Amount> fixedLabour) {

    public PlanRequest {
        procedures = procedures.stream().distinct().sorted().toList();
        open = open.stream().distinct().sorted().toList();
        done = done.stream().distinct().sorted().toList();
    }

    /** The same for other procedures, from a machine that is closed and with nothing done. */
    public PlanRequest fromClosed(List<String> others) {
        return new PlanRequest(subject, others, List.of(), List.of(), today, Optional.empty());
    }

    /** The same for one procedure alone, from the machine as it stands. */
    public PlanRequest only(String procedure) {
        return new PlanRequest(subject, List.of(procedure), open, done, today, Optional.empty());
    }

    /** Whether the machine is as it came in. */
    public boolean isFromClosed() {
        return open.isEmpty() && done.isEmpty();
    }
}
