// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

import org.benchlore.model.Machine;
import org.benchlore.model.Unit;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanRequest;

/**
 * What may be worth adding to a plan. Only what has a reason is in it.
 *
 * @param request what was asked
 * @param machine the machine
 * @param unit the unit, if one was named
 * @param plan the plan without any of it; empty where none can be made and only notes speak
 * @param keptUntil the day until which the unit is kept, if it is known
 * @param currency ISO 4217 code, or empty
 * @param surePercent width of the band of 'how sure'
 * @param proposals what may be added, what saves the customer most first
 * @param pairs two that share an opening
 * @param together what is worth adding together, counting each further opening once; empty if nothing needs one
 * @param remarks what somebody must know, a sentence each
 */
public record Adding(PlanRequest request, Machine machine, Optional<Unit> unit, Optional<Plan> plan,
        Optional<LocalDate> keptUntil, String currency, double surePercent, List<Proposal> proposals, List<Pair> pairs,
        Optional<Together> together, List<String> remarks) {

    /**
     * Two that share an opening.
     *
     * @param first id of one
     * @param second id of the other
     * @param openings titles of what is opened once for both
     * @param extraBoth extra for both, with tax
     * @param extraEach sum of the extras of each alone, with tax
     */
    public record Pair(String first, String second, List<String> openings, BigDecimal extraBoth, BigDecimal extraEach) {
    }

    /**
     * What is worth adding together on the customer's money alone.
     *
     * @param chosen ids
     * @param openings ids of what is opened besides
     * @param gain what it is worth after all its cost
     */
    public record Together(List<String> chosen, List<String> openings, BigDecimal gain) {
    }

    /** Months until the end of keeping, if it is known. */
    public OptionalInt months() {
        return keptUntil.map(day -> OptionalInt.of(Math.max(1,
                (int) java.time.temporal.ChronoUnit.MONTHS.between(request.today(), day)))).orElse(OptionalInt.empty());
    }

    /** The proposal with this id. */
    public Optional<Proposal> proposal(String id) {
        return proposals.stream().filter(it -> it.id().equals(id)).findFirst();
    }

    /**
     * The same with one proposal changed. What is worth adding together is worked out anew.
     *
     * @param id the proposal
     * @param change how
     * @return with other totals
     */
    public Adding change(String id, UnaryOperator<Proposal> change) {
        var changed = proposals.stream().map(it -> it.id().equals(id) ? change.apply(it) : it).toList();
        return with(Ranking.sorted(changed), pairs, Ranking.together(changed));
    }

    Adding with(List<Proposal> others, List<Pair> sharing, Optional<Together> choice) {
        return new Adding(request, machine, unit, plan, keptUntil, currency, surePercent, others, sharing, choice, remarks);
    }
}
