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
import org.benchlore.model.Component;
import org.benchlore.model.FluidWay;
import org.benchlore.model.Procedure;
import org.benchlore.model.SupplyUse;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * What comes out of a machine in one visit: a system that several works drain is empty after the first of them, so of each
 * system the work counts that lets out most. A system is the uppermost component that the procedure's component is part of.
 */
final class DrainedOnce {

    private final Library library;

    DrainedOnce(Library library) {
        this.library = library;
    }

    /** What is let out, to be added up. */
    List<SupplyUse> of(List<PlanItem> items) {
        var most = new LinkedHashMap<String, List<SupplyUse>>();
        for (int i = 0; i < items.size(); i++) {
            for (var let : let(items.get(i), i).entrySet()) {
                most.merge(let.getKey(), let.getValue(), (one, other) -> isMore(other, one) ? other : one);
            }
        }
        return most.values().stream().flatMap(List::stream).toList();
    }

    /** What one item lets out of one system, by supply and sort of unit. */
    private Map<String, List<SupplyUse>> let(PlanItem item, int number) {
        var all = new LinkedHashMap<String, List<SupplyUse>>();
        item.work().ifPresent(work -> work.getSupplies().stream().filter(use -> use.getWay() == FluidWay.OUT)
                .forEach(use -> all.computeIfAbsent(id(use.getSupply()) + " " + sort(use) + " " + system(item).orElse("item " + number),
                        it -> new ArrayList<>()).add(use)));
        return all;
    }

    private static String sort(SupplyUse use) {
        return use.getQuantity() == null ? "" : use.getQuantity().dimension().name();
    }

    private static boolean isMore(List<SupplyUse> one, List<SupplyUse> other) {
        return one.get(0).getQuantity() != null && sum(one).compareMagnitude(sum(other)) > 0;
    }

    private static Quantity sum(List<SupplyUse> uses) {
        var unit = uses.get(0).getQuantity().unit();
        return Quantity.of(uses.stream().map(use -> use.getQuantity().in(unit)).reduce(BigDecimal.ZERO, BigDecimal::add), unit);
    }

    private Optional<String> system(PlanItem item) {
        return item.owner() instanceof Procedure procedure && procedure.getComponent() != null
                ? library.resolve(procedure.getComponent()).map(DrainedOnce::uppermost).flatMap(library::addressOf).map(Address::toString)
                : Optional.empty();
    }

    private static EObject uppermost(EObject component) {
        var at = component;
        while (at.eContainer() instanceof Component whole) {
            at = whole;
        }
        return at;
    }

    private String id(EObject supply) {
        return library.addressOf(supply).map(Address::toString).orElse("?");
    }
}
