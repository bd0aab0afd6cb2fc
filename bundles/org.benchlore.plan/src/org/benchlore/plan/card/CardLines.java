// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.DoneWork;
import org.benchlore.model.PartNeed;
import org.benchlore.model.PartUse;
import org.benchlore.model.Procedure;
import org.benchlore.model.Round;
import org.benchlore.model.Work;
import org.benchlore.plan.Minutes;
import org.benchlore.plan.PlanItem;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.card.CardLine.Begin;
import org.benchlore.plan.card.CardLine.Caution;
import org.benchlore.plan.card.CardLine.Proof;
import org.benchlore.plan.card.CardLine.Task;
import org.benchlore.plan.card.CardLine.Torque;
import org.benchlore.plan.card.CardLine.Value;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Makes the lines of one round's card: what was planned in its order, then what was done without being planned. */
public final class CardLines {

    private final Library library;
    private final List<CardLine> lines = new ArrayList<>();
    private final Map<String, Integer> ticked = new HashMap<>();

    private CardLines(Library library) {
        this.library = library;
    }

    /**
     * Makes the lines.
     *
     * @param library the library that the plan was made from
     * @param card the card of the round
     * @param round the round, for what was done without being planned
     * @return lines in order
     */
    public static List<CardLine> of(Library library, Card card, Round round) {
        var made = new CardLines(library);
        card.items().forEach(made::item);
        made.unplanned(round);
        return List.copyOf(made.lines);
    }

    private void item(PlanItem item) {
        if (item.proof().isPresent()) {
            lines.add(new Proof(item.title(), item.proof().get()));
            return;
        }
        var inner = new ArrayList<CardLine>();
        item.work().ifPresent(work -> inside(work, inner));
        if (!inner.isEmpty()) {
            lines.add(new Begin(item.part(), item.title(), owner(item), item.change()));
            lines.addAll(inner);
        }
        lines.add(task(item, !inner.isEmpty()));
    }

    private Address owner(PlanItem item) {
        return library.addressOf(item.owner()).orElseThrow();
    }

    private void inside(Work work, List<CardLine> inner) {
        work.getHazards().forEach(hazard -> inner.add(new Caution(hazard)));
        work.getSteps().forEach(step -> {
            step.getHazards().forEach(hazard -> inner.add(new Caution(hazard)));
            step.getMeasurements().forEach(asked -> library.addressOf(asked)
                    .ifPresent(at -> inner.add(new Value(at, asked))));
            step.getFastenings().forEach(asked -> library.addressOf(asked)
                    .ifPresent(at -> inner.add(new Torque(at, asked))));
        });
    }

    private Task task(PlanItem item, boolean begun) {
        var place = isAccess(item.part()) ? new Address(owner(item).path(), item.id()) : owner(item);
        var uses = item.work().stream().flatMap(work -> work.getParts().stream())
                .filter(use -> use.getNeed() == PartNeed.ALWAYS).toList();
        return new Task(item.part(), item.title(), place, count(item.part(), place), begun, item.change(), item.minutes(),
                item.people(), addresses(uses.stream().map(PartUse::getComponent).toList()),
                addresses(uses.stream().map(PartUse::getPart).toList()), Optional.of(item));
    }

    private List<Address> addresses(List<? extends EObject> references) {
        return references.stream().flatMap(reference -> library.addressOf(reference).stream()).distinct().toList();
    }

    static boolean isAccess(Part part) {
        return part == Part.STRIP || part == Part.REFIT;
    }

    private int count(Part part, Address place) {
        return ticked.merge((isAccess(part) ? part : "") + "@" + place, 1, Integer::sum) - 1;
    }

    private void unplanned(Round round) {
        var seen = new HashMap<String, Integer>();
        for (var done : round.getDone()) {
            var part = done.getOpened() != null ? Part.STRIP : done.getClosed() != null ? Part.REFIT : Part.WORK;
            subject(done).ifPresent(place -> {
                var key = (isAccess(part) ? part : "") + "@" + place;
                if (seen.merge(key, 1, Integer::sum) > ticked.getOrDefault(key, 0)) {
                    lines.add(new Task(part, title(place), place, count(part, place), false, List.of(), Minutes.NONE, 1,
                            List.of(), List.of(), Optional.empty()));
                }
            });
        }
    }

    private Optional<Address> subject(DoneWork done) {
        return library.addressOf(done.getOpened()).or(() -> library.addressOf(done.getClosed()))
                .or(() -> library.addressOf(done.getProcedure()));
    }

    private String title(Address place) {
        return library.element(place).flatMap(element -> Optional.ofNullable(element instanceof Access access
                ? access.getTitle() : element instanceof Procedure procedure ? procedure.getTitle() : null)).orElse(place.id());
    }
}
