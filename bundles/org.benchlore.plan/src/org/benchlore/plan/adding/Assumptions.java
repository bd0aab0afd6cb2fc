// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.benchlore.evidence.decide.Again;
import org.benchlore.evidence.decide.Payer;
import org.benchlore.evidence.decide.Sum;

/**
 * All figures of a proposal, each with where it comes from. A changed figure gives another record; the sums follow.
 * What is not there counts as nothing, or closes the way out that would need it.
 *
 * @param figures the figures, in the order of {@link Figure}
 */
public record Assumptions(Map<Figure, Assumed> figures) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int CENTS = 2;

    /**
     * A figure.
     *
     * @param value its value, 0 or more
     * @param from where it comes from, in words
     * @param byHand whether a person put it in
     */
    public record Assumed(BigDecimal value, String from, boolean byHand) {
    }

    public Assumptions {
        var sorted = new EnumMap<Figure, Assumed>(Figure.class);
        sorted.putAll(figures);
        figures = Collections.unmodifiableMap(sorted);
    }

    /**
     * The same with one figure changed by a person.
     *
     * @param figure which
     * @param value 0 or more; at most 100 for one in a hundred
     * @return other assumptions
     * @throws IllegalArgumentException if the value makes no sense, in one plain sentence
     */
    public Assumptions with(Figure figure, BigDecimal value) {
        if (value.signum() < 0 || figure.form() == Figure.Form.OF_HUNDRED && value.compareTo(HUNDRED) > 0) {
            throw new IllegalArgumentException("'" + figure.word() + "' cannot be " + value.toPlainString() + ": give "
                    + (figure.form() == Figure.Form.OF_HUNDRED ? "a figure from 0 to 100." : "0 or more."));
        }
        return put(figure, value, "changed by hand", true);
    }

    /** The same with one figure of the program's. */
    Assumptions and(Figure figure, BigDecimal value, String from) {
        return put(figure, value.max(BigDecimal.ZERO), from, false);
    }

    private Assumptions put(Figure figure, BigDecimal value, String from, boolean byHand) {
        var changed = new EnumMap<Figure, Assumed>(Figure.class);
        changed.putAll(figures);
        changed.put(figure, new Assumed(value, from, byHand));
        return new Assumptions(changed);
    }

    /** The figure, if it is there. */
    public Optional<Assumed> find(Figure figure) {
        return Optional.ofNullable(figures.get(figure));
    }

    /** Its value, 0 if it is not there. */
    public BigDecimal value(Figure figure) {
        return find(figure).map(Assumed::value).orElse(BigDecimal.ZERO);
    }

    /** The customer's sum, with tax. */
    public Sum customer() {
        var ruins = money(value(Figure.RUINS).multiply(value(Figure.RUINS_OFTEN)).divide(HUNDRED));
        var standing = money(value(Figure.DAYS_OUT).multiply(value(Figure.DAY_OUT)));
        var again = new Again(value(Figure.LABOUR), value(Figure.PARTS), value(Figure.SUPPLIES), value(Figure.FINDING), ruins,
                standing, BigDecimal.ZERO);
        return new Sum(Payer.CUSTOMER, value(Figure.EXTRA), again, cap(), value(Figure.TEST), value(Figure.DAY_OUT),
                value(Figure.HOLDING));
    }

    /** The shop's own sum, without tax: what it pays if it stands for it itself. Empty if there is no later job to pay. */
    public Optional<Sum> shop() {
        return find(Figure.SHOP_AGAIN).map(again -> Sum.of(Payer.SHOP, value(Figure.SHOP_EXTRA), Again.NOTHING
                .supplied(again.value()).ruining(value(Figure.SHOP_BESIDE)).beside(value(Figure.COMEBACK_COST))));
    }

    private Optional<BigDecimal> cap() {
        return find(Figure.UNIT_VALUE).map(Assumed::value);
    }

    private static BigDecimal money(BigDecimal amount) {
        return amount.setScale(CENTS, RoundingMode.HALF_UP);
    }
}
