// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

import org.benchlore.evidence.decide.Additions;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Addition;
import org.benchlore.model.Part;
import org.benchlore.model.Shop;
import org.benchlore.model.Skill;
import org.benchlore.plan.LabourRates;
import org.benchlore.store.Library;

/** Figures from what a note gives alone: minutes while it is open, minutes alone, the part; at the technician's rate. */
final class NoteFigures {

    private final Library library;
    private final LabourRates rates;
    private final Optional<BigDecimal> tax;

    NoteFigures(Library library, LabourRates rates, Optional<Shop> shop) {
        this.library = library;
        this.rates = rates;
        this.tax = shop.map(Shop::getTaxPercent);
    }

    /**
     * Labour by a note's minutes, without tax.
     *
     * @param extra while it is open
     * @param alone for a job of its own, if the note gives it
     * @param from where it comes from, in words
     */
    record Labour(BigDecimal extra, Optional<BigDecimal> alone, String from) {
    }

    /** Labour alone, at the rate of who does it. */
    Labour labour(Idea idea) {
        var addition = idea.addition().orElseThrow();
        var sum = Additions.sum(BigDecimal.valueOf(minutes(addition.getExtra())), BigDecimal.valueOf(minutes(addition.getAlone())),
                BigDecimal.ZERO, rates.perHour(skill(idea)));
        return new Labour(sum.extra(), Optional.of(sum.again().labour()).filter(it -> addition.getAlone() != null),
                "the note's minutes at the " + word(skill(idea)) + "'s rate, since no accesses are written down");
    }

    private static Skill skill(Idea idea) {
        return idea.procedure().map(it -> it.getSkill()).filter(it -> it != Skill.NOT_RECORDED).orElse(Skill.TECHNICIAN);
    }

    private static String word(Skill skill) {
        return skill.getLiteral().toLowerCase(java.util.Locale.ROOT);
    }

    static long minutes(Quantity duration) {
        return duration == null ? 0 : duration.minutes();
    }

    Assumptions assumptions(Idea idea) {
        var addition = idea.addition().orElseThrow();
        var sum = Additions.sum(BigDecimal.valueOf(minutes(addition.getExtra())), BigDecimal.valueOf(minutes(addition.getAlone())),
                part(addition).or(idea::notedPrice).orElse(BigDecimal.ZERO), rates.perHour(skill(idea)));
        var from = "the note's minutes and part, at the " + word(skill(idea)) + "'s rate";
        return new Assumptions(Map.of()).and(Figure.EXTRA, gross(sum.extra()), from)
                .and(Figure.LABOUR, gross(sum.again().labour()), from).and(Figure.PARTS, gross(sum.again().part()), from)
                .and(Figure.SHOP_EXTRA, sum.extra(), from + ", without tax")
                .and(Figure.SHOP_AGAIN, sum.again().total(), from + ", without tax");
    }

    private BigDecimal gross(BigDecimal net) {
        return PlanFigures.gross(net, tax);
    }

    private Optional<BigDecimal> part(Addition addition) {
        return Optional.ofNullable(addition.getPart()).flatMap(library::resolve).filter(Part.class::isInstance)
                .map(Part.class::cast).map(Part::getPrice).map(price -> price.value());
    }
}
