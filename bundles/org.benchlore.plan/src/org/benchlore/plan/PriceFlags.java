// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.Shop;

/** Says what a price stands on that may be wrong: prices without a day or of long ago, times never compared with jobs. */
final class PriceFlags {

    private static final int MONTHS = 12;

    private final LocalDate today;
    private final List<String> flags = new ArrayList<>();

    PriceFlags(LocalDate today) {
        this.today = today;
    }

    List<String> of(List<PlanItem> items, List<PartLine> parts, List<SupplyLine> supplies, Optional<Shop> shop,
            LabourRates rates) {
        shop(items, shop, rates);
        parts.stream().filter(line -> line.quantity() > 0).forEach(this::part);
        supplies.stream().filter(line -> !line.isOut()).forEach(this::supply);
        times(items);
        return List.copyOf(flags);
    }

    private void shop(List<PlanItem> items, Optional<Shop> shop, LabourRates rates) {
        if (shop.map(Shop::getTaxPercent).isEmpty()) {
            flags.add("The shop's tax is not recorded: none was added.");
        }
        if (items.stream().anyMatch(item -> rates.of(item.skill()).isEmpty())) {
            flags.add("The shop has no labour rate that holds today: labour counts nothing.");
        }
    }

    private void part(PartLine line) {
        var name = line.part().map(Titles::of).orElse(line.id());
        var price = line.part().flatMap(part -> Optional.ofNullable(part.getPrice()));
        if (price.isEmpty()) {
            flags.add("No price for '" + name + "': it counts nothing.");
        } else {
            day(name, line.part().get().getPriceOn());
        }
        line.part().filter(part -> part.getSupersededBy() != null)
                .ifPresent(part -> flags.add("'" + name + "' is superseded: order what replaces it."));
    }

    private void supply(SupplyLine line) {
        var name = line.supply().map(Titles::of).orElse(line.id());
        if (line.price().isEmpty()) {
            flags.add("No price for '" + name + "' by its quantity: it counts nothing.");
        } else {
            day(name, line.supply().get().getPriceOn());
        }
    }

    private void day(String name, LocalDate day) {
        if (day == null) {
            flags.add("The day of the price of '" + name + "' is not recorded.");
        } else if (day.plusMonths(MONTHS).isBefore(today)) {
            flags.add("The price of '" + name + "' is of " + day + ".");
        }
    }

    private void times(List<PlanItem> items) {
        var unchecked = items.stream().filter(item -> item.proof().isEmpty() && item.minutes().usual() > 0 && item.work()
                .map(work -> work.getMinutesCheckedOn() == null).orElse(true)).map(PlanItem::title).distinct().toList();
        if (!unchecked.isEmpty()) {
            flags.add("Times never compared with real jobs: " + String.join(", ", unchecked) + ".");
        }
        var without = items.stream().filter(item -> item.proof().isEmpty() && item.minutes().usual() == 0)
                .map(PlanItem::title).distinct().toList();
        if (!without.isEmpty()) {
            flags.add("No time recorded, counted as none: " + String.join(", ", without) + ".");
        }
    }
}
