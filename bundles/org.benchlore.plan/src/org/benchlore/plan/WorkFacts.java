// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.FluidWay;
import org.benchlore.model.Part;
import org.benchlore.model.PartNeed;
import org.benchlore.model.PartUse;
import org.benchlore.model.Procedure;
import org.benchlore.model.Skill;
import org.benchlore.model.Supply;
import org.benchlore.model.SupplyUse;
import org.benchlore.model.Work;
import org.benchlore.store.Library;

/** What a work takes and what that costs the customer, in whole cents without tax. */
final class WorkFacts {

    private static final int CENTS = 2;
    private static final int DIGITS = 10;
    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    private final Library library;
    private final LabourRates rates;

    WorkFacts(Library library, LabourRates rates) {
        this.library = library;
        this.rates = rates;
    }

    static int people(Work work) {
        return work == null || work.getPeople() == null ? 1 : Math.max(1, work.getPeople());
    }

    static Skill skill(Work work, Procedure procedure) {
        if (work != null && work.getSkill() != Skill.NOT_RECORDED) {
            return work.getSkill();
        }
        return procedure == null || procedure.getSkill() == Skill.NOT_RECORDED ? Skill.TECHNICIAN : procedure.getSkill();
    }

    /** Time of a work; the whole job's where the work has none. */
    static Minutes minutes(Work work, Procedure procedure) {
        if (work != null && (work.getMinutesUsual() != null || work.getMinutesBad() != null)) {
            return Minutes.of(work.getMinutesUsual(), work.getMinutesBad());
        }
        return procedure == null ? Minutes.NONE : Minutes.of(procedure.getWholeJobUsual(), procedure.getWholeJobBad());
    }

    static boolean isByWholeJob(Work work, Procedure procedure) {
        return (work == null || work.getMinutesUsual() == null && work.getMinutesBad() == null)
                && (procedure.getWholeJobUsual() != null || procedure.getWholeJobBad() != null);
    }

    /** Cost of usual time times people at the rate of who does it, and of what is always used. */
    long cents(Work work, Procedure procedure) {
        var labour = labour(minutes(work, procedure).usual() * people(work), skill(work, procedure));
        if (work == null) {
            return cents(labour);
        }
        var parts = work.getParts().stream().filter(use -> use.getNeed() == PartNeed.ALWAYS).map(this::price)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        var supplies = work.getSupplies().stream().map(this::price).reduce(BigDecimal.ZERO, BigDecimal::add);
        return cents(labour.add(parts).add(supplies));
    }

    /** Price of so many minutes of one person, not rounded to cents. */
    BigDecimal labour(long minutes, Skill skill) {
        return rates.perHour(skill).multiply(BigDecimal.valueOf(minutes)).divide(HOUR, DIGITS, RoundingMode.HALF_UP);
    }

    static long cents(BigDecimal amount) {
        return amount.setScale(CENTS, RoundingMode.HALF_UP).unscaledValue().longValueExact();
    }

    Optional<Part> part(PartUse use) {
        return library.resolve(use.getPart()).filter(Part.class::isInstance).map(Part.class::cast);
    }

    Optional<Supply> supply(SupplyUse use) {
        return library.resolve(use.getSupply()).filter(Supply.class::isInstance).map(Supply.class::cast);
    }

    static int quantity(PartUse use) {
        return use.getQuantity() == null ? 1 : use.getQuantity();
    }

    private BigDecimal price(PartUse use) {
        return part(use).filter(part -> part.getPrice() != null)
                .map(part -> part.getPrice().value().multiply(BigDecimal.valueOf(quantity(use)))).orElse(BigDecimal.ZERO);
    }

    private BigDecimal price(SupplyUse use) {
        return use.getWay() == FluidWay.OUT ? BigDecimal.ZERO
                : supply(use).flatMap(supply -> price(supply, use.getQuantity())).orElse(BigDecimal.ZERO);
    }

    /** Price of a quantity as a share of its pack, empty where price or quantities are not comparable. */
    static Optional<BigDecimal> price(Supply supply, Quantity quantity) {
        if (supply.getPrice() == null || supply.getPack() == null || quantity == null
                || supply.getPack().value().signum() == 0 || supply.getPack().dimension() != quantity.dimension()) {
            return Optional.empty();
        }
        var base = supply.getPack().unit();
        return Optional.of(supply.getPrice().value().multiply(quantity.in(base)).divide(supply.getPack().value(), DIGITS,
                RoundingMode.HALF_UP));
    }
}
