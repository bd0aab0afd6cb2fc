// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.model.Person;
import org.benchlore.model.Qualification;
import org.benchlore.model.Shop;
import org.benchlore.model.Tool;
import org.benchlore.model.ToolHolding;
import org.eclipse.emf.ecore.EObject;

/** Compares what a plan takes with what the shop has: tools, people, qualifications. */
final class PlanLack {

    private final PlanBook book;
    private final LocalDate today;

    PlanLack(PlanBook book, LocalDate today) {
        this.book = book;
        this.today = today;
    }

    /** Tools of a plan by id, each with the remarks at its uses; the tool is empty if the library does not hold it. */
    List<ToolLine> tools(List<PlanItem> items) {
        var uses = new LinkedHashMap<String, Set<String>>();
        var tools = new LinkedHashMap<String, Optional<Tool>>();
        items.forEach(item -> item.work().ifPresent(work -> work.getTools().forEach(use -> {
            var id = id(use.getTool());
            tools.putIfAbsent(id, book.library().resolve(use.getTool()).filter(Tool.class::isInstance).map(Tool.class::cast));
            var said = uses.computeIfAbsent(id, it -> new LinkedHashSet<>());
            if (use.getText() != null && !use.getText().isBlank()) {
                said.add(use.getText());
            }
        })));
        return uses.entrySet().stream().map(entry -> line(entry.getKey(), tools.get(entry.getKey()), entry.getValue())).toList();
    }

    private ToolLine line(String id, Optional<Tool> tool, Set<String> remarks) {
        var held = holdings(id);
        return new ToolLine(id, tool, List.copyOf(remarks), held.stream().map(it -> it.getPlace() == null ? "" : it.getPlace())
                .toList(), !held.isEmpty() && held.stream().allMatch(this::isDue));
    }

    private List<ToolHolding> holdings(String id) {
        return book.shop().map(shop -> shop.getSites().stream().flatMap(site -> site.getTools().stream())
                .filter(it -> it.getTool() != null && id(it.getTool()).equals(id)).toList()).orElse(List.of());
    }

    private boolean isDue(ToolHolding holding) {
        return holding.getCalibrationDue() != null && holding.getCalibrationDue().isBefore(today);
    }

    private String id(EObject reference) {
        return book.library().addressOf(reference).map(Address::id).orElse("?");
    }

    /** What is missing among people, in one sentence each. */
    List<String> people(List<PlanItem> items) {
        var people = book.shop().map(Shop::getPeople).orElse(new org.eclipse.emf.common.util.BasicEList<>()).stream()
                .filter(person -> person.getLeft() == null || person.getLeft().isAfter(today)).toList();
        if (people.isEmpty()) {
            return List.of("No people are written down for this shop: whether there are enough was not looked at.");
        }
        var lacks = new ArrayList<String>();
        int most = items.stream().mapToInt(PlanItem::people).max().orElse(1);
        if (most > people.size()) {
            lacks.add("People: " + most + " at a time are needed, " + people.size() + " work here.");
        }
        items.stream().map(PlanItem::skill).distinct().sorted().filter(skill -> people.stream().noneMatch(person ->
                person.getSkill().getValue() >= skill.getValue())).forEach(skill ->
                        lacks.add("Nobody here is a " + skill.getLiteral().toLowerCase(Locale.ROOT) + "."));
        qualifications(items).forEach((qualification, title) -> {
            if (people.stream().map(Person::getQualifications).noneMatch(held -> held.contains(qualification))) {
                lacks.add("Nobody here holds the qualification " + qualification.getLiteral().toLowerCase(Locale.ROOT)
                        .replace('_', ' ') + ", needed for '" + title + "'; local rules decide.");
            }
        });
        return lacks;
    }

    private static Map<Qualification, String> qualifications(List<PlanItem> items) {
        var found = new LinkedHashMap<Qualification, String>();
        items.forEach(item -> item.work().ifPresent(work -> work.getQualifications().stream()
                .filter(it -> it != Qualification.NONE && it != Qualification.NOT_RECORDED)
                .forEach(it -> found.putIfAbsent(it, item.title()))));
        return found;
    }
}
