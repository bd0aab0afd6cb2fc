// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.measure.Dimension;
import org.benchlore.model.Address;
import org.benchlore.model.Part;
import org.benchlore.model.PartNeed;
import org.benchlore.model.PartUse;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Adds up the parts of a plan; what comes in a kit of the plan is not counted a second time. */
final class PlanParts {

    private final Library library;
    private final PlanBook book;
    private final Map<String, Sum> always = new LinkedHashMap<>();
    private final Map<String, Sum> ifFound = new LinkedHashMap<>();

    /** A part being added up. */
    private static final class Sum {
        private final Optional<Part> part;
        private final Set<String> usedFor = new LinkedHashSet<>();
        private int quantity;
        private int inKits;

        Sum(Optional<Part> part) {
            this.part = part;
        }
    }

    PlanParts(PlanBook book) {
        this.book = book;
        this.library = book.library();
    }

    List<PartLine> of(List<PlanItem> items) {
        var renewed = uses(items).filter(use -> use.getNeed() == PartNeed.ALWAYS).flatMap(this::place).collect(Collectors.toSet());
        items.forEach(item -> item.work().ifPresent(work -> work.getParts().stream().filter(use -> use.getNeed() == PartNeed.ALWAYS
                || place(use).noneMatch(renewed::contains)).forEach(use -> add(item, use))));
        takeOffKits();
        var lines = new ArrayList<PartLine>();
        always.forEach((id, sum) -> line(id, sum, false).ifPresent(lines::add));
        ifFound.forEach((id, sum) -> line(id, sum, true).ifPresent(lines::add));
        return List.copyOf(lines);
    }

    private static Stream<PartUse> uses(List<PlanItem> items) {
        return items.stream().flatMap(item -> item.work().stream()).flatMap(work -> work.getParts().stream());
    }

    /** The part in its place; what is renewed there anyway is not renewed once more if it is found bad. */
    private Stream<String> place(PartUse use) {
        return use.getComponent() == null ? Stream.empty()
                : library.addressOf(use.getComponent()).map(component -> component + " " + id(use.getPart())).stream();
    }

    private void add(PlanItem item, PartUse use) {
        var id = id(use.getPart());
        var sum = (use.getNeed() == PartNeed.ALWAYS ? always : ifFound).computeIfAbsent(id, it -> new Sum(part(use.getPart())));
        sum.quantity += WorkFacts.quantity(use);
        sum.usedFor.add(item.title());
    }

    private void takeOffKits() {
        for (var sum : List.copyOf(always.values())) {
            sum.part.ifPresent(kit -> kit.getKit().forEach(line -> {
                var inner = always.get(id(line.getPart()));
                int free = sum.quantity * (line.getQuantity() == null ? 1 : line.getQuantity());
                if (inner != null) {
                    inner.inKits += Math.min(free, inner.quantity);
                    inner.quantity -= Math.min(free, inner.quantity);
                }
            }));
        }
    }

    private Optional<PartLine> line(String id, Sum sum, boolean isOnlyIfFound) {
        if (sum.quantity == 0 && sum.inKits == 0) {
            return Optional.empty();
        }
        var stock = stock(id);
        boolean isMissing = stock.compareTo(BigDecimal.valueOf(sum.quantity)) < 0;
        long lead = isMissing ? sum.part.map(Part::getLeadTime).map(time -> time.minutes()).orElse(0L) : 0;
        return Optional.of(new PartLine(id, sum.part, sum.quantity, sum.inKits, isOnlyIfFound, stock, lead,
                List.copyOf(sum.usedFor)));
    }

    /** How many pieces lie at the sites; a quantity of another sort than pieces is not counted. */
    private BigDecimal stock(String id) {
        return book.shop().map(shop -> shop.getSites().stream().flatMap(site -> site.getStock().stream())
                .filter(line -> line.getPart() != null && id(line.getPart()).equals(id) && line.getQuantity() != null
                        && line.getQuantity().dimension() == Dimension.COUNT)
                .map(line -> line.getQuantity().value()).reduce(BigDecimal.ZERO, BigDecimal::add)).orElse(BigDecimal.ZERO);
    }

    private String id(EObject reference) {
        return library.addressOf(reference).map(Address::id).orElse("?");
    }

    private Optional<Part> part(EObject reference) {
        return library.resolve(reference).filter(Part.class::isInstance).map(Part.class::cast);
    }
}
