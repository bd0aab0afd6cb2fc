// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.benchlore.model.YesNo;
import org.benchlore.plan.PartLine;
import org.benchlore.plan.Plan;
import org.benchlore.plan.PlanPrice.PriceLine;

/**
 * Figures from plans: extra = the plan with it less the plan without; apart = its own plan from the closed machine.
 * Prices with tax are what the customer pays; the shop's own are without.
 */
final class PlanFigures {

    private static final int CENTS = 2;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final long DAY = 1440;

    private final Plan without;
    private final Plan with;
    private final Plan apart;

    PlanFigures(Plan without, Plan with, Plan apart) {
        this.without = without;
        this.with = with;
        this.apart = apart;
    }

    long extraMinutes() {
        return with.times().minutes().usual() - without.times().minutes().usual();
    }

    /** The sums of the plans, and what waits for parts. */
    Assumptions assumptions() {
        var price = apart.price();
        var parts = gross(apart, sum(price.parts()));
        var supplies = gross(apart, sum(price.supplies()));
        var own = "its own plan from the closed machine";
        return new Assumptions(Map.of())
                .and(Figure.EXTRA, with.price().total().subtract(without.price().total()), "the plan with it less the plan without")
                .and(Figure.LABOUR, price.total().subtract(parts).subtract(supplies), own)
                .and(Figure.PARTS, parts, own).and(Figure.SUPPLIES, supplies, own)
                .and(Figure.DAYS_OUT, BigDecimal.valueOf(ChronoUnit.DAYS.between(apart.request().today(),
                        apart.times().handBack().toLocalDate())), own + ", from the day it comes in")
                .and(Figure.PART_DAYS, BigDecimal.valueOf(partDays()), "parts that do not lie on the shelf")
                .and(Figure.HOLDING, holding(), "parts to be ordered that cannot be returned")
                .and(Figure.SHOP_EXTRA, with.price().net().subtract(without.price().net()), "the same plans without tax")
                .and(Figure.SHOP_AGAIN, price.net(), own + ", without tax");
    }

    /**
     * The sums where no accesses are written down: a whole job's hours hold strip and refit, so a note's own minutes go before
     * them. Parts and supplies are the plans'.
     */
    Assumptions noted(NoteFigures.Labour labour) {
        var more = goods(with).subtract(goods(without));
        var figures = assumptions().and(Figure.EXTRA, gross(with, labour.extra().add(more)), labour.from())
                .and(Figure.SHOP_EXTRA, labour.extra().add(more), labour.from() + ", without tax");
        return labour.alone().map(alone -> figures.and(Figure.LABOUR, gross(apart, alone), labour.from())
                .and(Figure.SHOP_AGAIN, alone.add(goods(apart)), labour.from() + ", without tax")).orElse(figures);
    }

    private static BigDecimal goods(Plan plan) {
        return sum(plan.price().parts()).add(sum(plan.price().supplies()));
    }

    /** Accesses opened besides, each with its price with tax. */
    Map<String, BigDecimal> openings() {
        var more = new ArrayList<>(with.opened());
        without.opened().forEach(more::remove);
        var costs = new TreeMap<String, BigDecimal>();
        with.problem().accesses().stream().filter(access -> more.contains(access.id())).forEach(access ->
                costs.put(access.id(), gross(with, BigDecimal.valueOf(access.strip() + access.refit(), CENTS))));
        return costs;
    }

    /** Whether what is open gives it for nothing, or for less than half of what opening costs for it alone. */
    boolean isCheaplyReached() {
        var own = new TreeMap<String, Long>();
        apart.problem().accesses().forEach(access -> own.put(access.id(), access.strip() + access.refit()));
        long alone = apart.opened().stream().mapToLong(id -> own.getOrDefault(id, 0L)).sum();
        var more = openings().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return more.signum() == 0 && alone > 0 || more.multiply(BigDecimal.valueOf(2))
                .compareTo(gross(apart, BigDecimal.valueOf(alone, CENTS))) < 0;
    }

    /** Lines that are only there because of it. */
    private List<PartLine> added() {
        var before = new TreeMap<String, Integer>();
        without.parts().stream().filter(line -> !line.isOnlyIfFound()).forEach(line -> before.put(line.id(), line.quantity()));
        return with.parts().stream().filter(line -> !line.isOnlyIfFound() && line.isMissing()
                && line.quantity() > before.getOrDefault(line.id(), 0)).toList();
    }

    private long partDays() {
        long minutes = added().stream().mapToLong(PartLine::leadMinutes).max().orElse(0);
        return (minutes + DAY - 1) / DAY;
    }

    private BigDecimal holding() {
        return gross(with, added().stream().filter(line -> line.part().filter(it -> it.getReturnable() == YesNo.YES).isEmpty())
                .map(line -> line.part().flatMap(it -> Optional.ofNullable(it.getPrice())).map(price -> price.value()
                        .multiply(BigDecimal.valueOf(line.quantity()))).orElse(BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static BigDecimal sum(List<PriceLine> lines) {
        return lines.stream().map(PriceLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** With tax, rounded half up to cents. */
    static BigDecimal gross(BigDecimal net, Optional<BigDecimal> taxPercent) {
        return net.multiply(HUNDRED.add(taxPercent.orElse(BigDecimal.ZERO))).divide(HUNDRED, CENTS, RoundingMode.HALF_UP);
    }

    private static BigDecimal gross(Plan plan, BigDecimal net) {
        return gross(net, plan.price().taxPercent());
    }
}
