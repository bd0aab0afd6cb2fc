// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence.decide;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.benchlore.evidence.Estimate;

/**
 * Decides cases by the best figure. With p the chance that the old part brings the unit back, q that renewing brings
 * trouble, E the extra if done now and A the cost if it must come apart again: renewing pays when (p − q) × A &gt; E,
 * so from p = E / A + q on.
 */
public final class Decisions {

    private static final int DECIMALS = 2;

    private Decisions() {
    }

    /**
     * Decides one case.
     *
     * @param asked the case
     * @return the verdicts
     */
    public static Decision decide(Case asked) {
        return new Decision(asked, verdict(asked, asked.customer()), asked.shop().map(sum -> verdict(asked, sum)));
    }

    /**
     * Decides several cases and leaves out those without a reason.
     *
     * @param asked the cases
     * @return the decisions, what saves the customer most first
     */
    public static List<Decision> withReason(List<Case> asked) {
        return asked.stream().filter(one -> !one.reasons().isEmpty()).map(Decisions::decide)
                .sorted(Comparator.comparing(Decisions::saving).reversed()).toList();
    }

    private static BigDecimal saving(Decision decision) {
        var costs = decision.customer().costs();
        return costs.isEmpty() ? BigDecimal.ZERO
                : costs.get(Option.LEAVE).subtract(costs.get(decision.customer().least()));
    }

    private static Verdict verdict(Case asked, Sum sum) {
        double trouble = asked.trouble().chance();
        var breakEven = breakEven(sum, trouble);
        if (asked.comeback().isEmpty()) {
            return new Verdict(sum, Map.of(), Option.LEAVE, breakEven, false, 0);
        }
        var comeback = asked.comeback().get();
        var costs = new EnumMap<Option, BigDecimal>(Option.class);
        costs(asked, sum, comeback.chance()).forEach((option, cost) -> costs.put(option, money(cost)));
        var least = costs.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey();
        boolean pays = (comeback.chance() - trouble) * sum.apartLater().doubleValue() > sum.extra().doubleValue();
        return new Verdict(sum, Map.copyOf(costs), least, breakEven, pays, sure(comeback, breakEven, pays));
    }

    private static double sure(Estimate comeback, OptionalDouble breakEven, boolean pays) {
        double above = breakEven.isEmpty() ? 0 : comeback.sureAbove(breakEven.getAsDouble());
        return pays ? above : 1 - above;
    }

    /** Above 1 it can never pay: it cannot bring the unit back more than every time. */
    private static OptionalDouble breakEven(Sum sum, double trouble) {
        if (sum.apartLater().signum() == 0) {
            return OptionalDouble.empty();
        }
        double figure = sum.extra().doubleValue() / sum.apartLater().doubleValue() + trouble;
        return figure < 1 ? OptionalDouble.of(figure) : OptionalDouble.empty();
    }

    private static Map<Option, Double> costs(Case asked, Sum sum, double comeback) {
        double apart = sum.apartLater().doubleValue();
        double renewed = sum.extra().doubleValue() + asked.trouble().chance() * apart;
        double perDay = sum.standingPerDay().doubleValue();
        var delivery = asked.delivery();
        var costs = new EnumMap<Option, Double>(Option.class);
        costs.put(Option.LEAVE, comeback * apart);
        costs.put(Option.RENEW, renewed + delivery.waitingIfPlanned() * perDay);
        asked.test().ifPresent(look -> costs.put(Option.TEST, sum.test().doubleValue()
                + looked(look, comeback, renewed + delivery.waitingIfFound() * perDay, apart)));
        asked.sight().filter(look -> delivery.here() || delivery.ahead()).ifPresent(look -> costs.put(Option.SHELF,
                (delivery.here() ? 0 : sum.holding().doubleValue()) + looked(look, comeback, renewed, apart)));
        return costs;
    }

    /** What is blamed is renewed; what would fail and is not found comes back. */
    private static double looked(Look look, double comeback, double renewed, double apart) {
        double found = comeback * look.findsBad();
        double blamed = (1 - comeback) * look.blamesGood();
        return (found + blamed) * renewed + (comeback - found) * apart;
    }

    private static BigDecimal money(double cost) {
        return BigDecimal.valueOf(cost).setScale(DECIMALS, RoundingMode.HALF_UP);
    }

    /**
     * Returns what renewing is worth to a payer before its own extra: (p − q) × A.
     *
     * @param asked the case
     * @param sum whose sum
     * @return an amount, below 0 if renewing does harm, empty if nothing is known
     */
    public static Optional<BigDecimal> worth(Case asked, Sum sum) {
        return asked.comeback().map(comeback -> money((comeback.chance() - asked.trouble().chance())
                * sum.apartLater().doubleValue()));
    }
}
