// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Rate;
import org.benchlore.model.Shop;
import org.benchlore.model.Skill;

/** What an hour of somebody costs: the newest rate of that skill, else the next higher skill's, else the highest. */
public final class LabourRates {

    private final List<Rate> rates;

    /**
     * Looks at the rates of a shop.
     *
     * @param shop the shop, if it is written down
     * @param today rates of a later day are left out
     */
    public LabourRates(Optional<Shop> shop, LocalDate today) {
        this.rates = shop.map(it -> it.getRates().stream().filter(rate -> rate.getPerHour() != null
                && (rate.getSince() == null || !rate.getSince().isAfter(today))).toList()).orElse(List.of());
    }

    /** The rate that is charged for a skill, empty if the shop has none. */
    Optional<Rate> of(Skill skill) {
        return rates.stream().filter(rate -> rate.getSkill().getValue() >= skill.getValue())
                .min(Comparator.comparingInt((Rate rate) -> rate.getSkill().getValue()).thenComparing(LabourRates::newest)
                        .thenComparing(Rate::getId))
                .or(() -> rates.stream().max(Comparator.comparing((Rate rate) -> rate.getPerHour().value())
                        .thenComparing(Rate::getId)));
    }

    private static int newest(Rate one, Rate other) {
        return day(other).compareTo(day(one));
    }

    private static LocalDate day(Rate rate) {
        return rate.getSince() == null ? LocalDate.MIN : rate.getSince();
    }

    /** What an hour of that skill costs without tax, 0 if the shop has no rates. */
    public BigDecimal perHour(Skill skill) {
        return of(skill).map(rate -> rate.getPerHour().value()).orElse(BigDecimal.ZERO);
    }
}
