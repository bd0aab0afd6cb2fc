// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.evidence.Estimate;
import org.benchlore.evidence.decide.Benefit;
import org.benchlore.evidence.decide.Case;
import org.benchlore.evidence.decide.Decision;
import org.benchlore.evidence.decide.Decisions;
import org.benchlore.evidence.decide.Delivery;
import org.benchlore.evidence.decide.Look;
import org.benchlore.evidence.decide.Reason;
import org.benchlore.plan.adding.Assumptions.Assumed;

/**
 * Something that may be worth adding, with all it stands on.
 *
 * @param id id of the procedure, or of the note's addition where none is written
 * @param title what would be done
 * @param component address of what it is done on as text, empty if not known
 * @param notes ids of the notes that say so
 * @param reasons why it is thought of; never empty
 * @param benefits what it buys beside the money
 * @param basis where times and prices come from
 * @param extra usual minutes more if it is done now
 * @param apart usual minutes of the later job
 * @param openings what has to be opened besides, with its price with tax
 * @param canOrder whether parts can still be ordered before the strip
 * @param test title of the test that proves it, if there is one
 * @param known how often it was seen
 * @param assumptions every figure
 */
public record Proposal(String id, String title, String component, List<String> notes, List<Reason> reasons,
        Set<Benefit> benefits, Basis basis, long extra, long apart, Map<String, BigDecimal> openings, boolean canOrder,
        Optional<String> test, Known known, Assumptions assumptions) {

    /** Stands in where a figure comes from if nothing is known of a part of it. */
    public static final String TOO_LOW = "too low: ";

    private static final double HUNDRED = 100;

    /** Where times and prices come from. */
    public enum Basis {
        /** The plan with it against the plan without, and its own plan. */
        PLANS,
        /** What a note gives. */
        NOTE
    }

    /**
     * The same with one figure changed.
     *
     * @param figure which
     * @param value its value
     * @return another proposal with other sums
     * @throws IllegalArgumentException if the value makes no sense
     */
    public Proposal with(Figure figure, BigDecimal value) {
        return new Proposal(id, title, component, notes, reasons, benefits, basis, extra, apart, openings, canOrder, test,
                known, assumptions.with(figure, value));
    }

    /** What would be decided by these figures; the customer's sum and the shop's stand side by side. */
    public Decision decision() {
        return Decisions.decide(asked());
    }

    /** What renewing is worth to the customer before its own extra; empty if nothing is known. */
    public Optional<BigDecimal> worth() {
        var asked = asked();
        return Decisions.worth(asked, asked.customer());
    }

    private Case asked() {
        int days = assumptions.value(Figure.PART_DAYS).intValue();
        return new Case(title, assumptions.customer(), assumptions.shop(), comeback(),
                estimate(Figure.TROUBLE, known.findings().trouble()), look(Figure.TEST_FINDS, Figure.TEST_BLAMES),
                look(Figure.EYE_FINDS, Figure.EYE_BLAMES), new Delivery(days == 0, canOrder, days), reasons, benefits);
    }

    private Optional<Estimate> comeback() {
        return assumptions.find(Figure.COMES_BACK).map(it -> estimate(Figure.COMES_BACK, known.findings().comeback()));
    }

    /** A figure put in by hand is worth as much as what was counted; at least as one job. */
    private Estimate estimate(Figure figure, Estimate counted) {
        return assumptions.find(figure).filter(Assumed::byHand)
                .map(it -> Estimate.of(it.value().doubleValue() / HUNDRED, Math.max(1, known.weight()))).orElse(counted);
    }

    private Optional<Look> look(Figure finds, Figure blames) {
        return assumptions.find(finds).map(it -> new Look(it.value().doubleValue() / HUNDRED,
                assumptions.value(blames).doubleValue() / HUNDRED));
    }
}
