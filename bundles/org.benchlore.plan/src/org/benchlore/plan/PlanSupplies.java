// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.FluidWay;
import org.benchlore.model.Supply;
import org.benchlore.model.SupplyUse;
import org.benchlore.store.Library;

/** Adds up the supplies of a plan, what goes in or onto apart from what comes out. */
final class PlanSupplies {

    private final Library library;
    private final Map<String, List<Quantity>> sums = new LinkedHashMap<>();
    private final Map<String, Optional<Supply>> supplies = new LinkedHashMap<>();

    PlanSupplies(Library library) {
        this.library = library;
    }

    List<SupplyLine> of(List<PlanItem> items) {
        items.forEach(item -> item.work().ifPresent(work -> work.getSupplies().stream()
                .filter(use -> use.getWay() != FluidWay.OUT).forEach(this::add)));
        new DrainedOnce(library).of(items).forEach(this::add);
        return sums.entrySet().stream().map(entry -> line(entry.getKey(), entry.getValue())).toList();
    }

    private void add(SupplyUse use) {
        var id = library.addressOf(use.getSupply()).map(Address::id).orElse("?");
        var key = (use.getWay() == FluidWay.OUT ? "-" : "+") + id;
        supplies.putIfAbsent(key, library.resolve(use.getSupply()).filter(Supply.class::isInstance).map(Supply.class::cast));
        var all = sums.computeIfAbsent(key, it -> new ArrayList<>());
        if (use.getQuantity() == null) {
            return;
        }
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).unit().convertsTo(use.getQuantity().unit())) {
                var unit = all.get(i).unit();
                all.set(i, Quantity.of(all.get(i).value().add(use.getQuantity().in(unit)), unit));
                return;
            }
        }
        all.add(use.getQuantity());
    }

    private SupplyLine line(String key, List<Quantity> quantities) {
        var supply = supplies.get(key);
        boolean isOut = key.startsWith("-");
        return new SupplyLine(key.substring(1), supply, List.copyOf(quantities),
                isOut ? Optional.empty() : supply.flatMap(it -> price(it, quantities)), isOut);
    }

    private static Optional<BigDecimal> price(Supply supply, List<Quantity> quantities) {
        var sum = BigDecimal.ZERO;
        for (var quantity : quantities) {
            var price = WorkFacts.price(supply, quantity);
            if (price.isEmpty()) {
                return price;
            }
            sum = sum.add(price.get());
        }
        return quantities.isEmpty() ? Optional.empty() : Optional.of(sum);
    }
}
