// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.benchlore.diagnose.book.WorkDone.Disturbance;
import org.benchlore.diagnose.book.WorkDone.Sort;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Step;
import org.benchlore.model.StepKind;
import org.benchlore.model.Work;
import org.benchlore.store.TextReferences;

/** Reads out of the steps of a work what it disturbs: connectors, lines, marks, grease, and the components they name. */
final class Disturbances {

    private static final Map<Sort, Pattern> WORDS = new java.util.EnumMap<>(Map.of(
            Sort.CONNECTOR, Pattern.compile("\\b(?:connectors?|unplug|plug (?:it|them)? ?in|plugs? of)\\b"),
            Sort.AIR, Pattern.compile("\\b(?:unions?|bleed|connect the line)\\b"),
            Sort.MARK, Pattern.compile("\\bmarks?\\b"),
            Sort.GREASE, Pattern.compile("\\b(?:grease|threadlock|a film of)\\b")));
    private static final Set<StepKind> ONLY_LOOKS = Set.of(StepKind.INSPECT, StepKind.MEASURE, StepKind.DECIDE);
    private static final Pattern HEAD = Pattern.compile(" (?:of|to|for|in) .*");

    private final MachineBook book;
    private final List<Disturbance> steps = new ArrayList<>();
    private final Map<Address, String> components = new LinkedHashMap<>();

    Disturbances(MachineBook book) {
        this.book = book;
    }

    List<Disturbance> steps() {
        return List.copyOf(steps);
    }

    Map<Address, String> components() {
        return components;
    }

    void disturbed(Address component, String how) {
        components.putIfAbsent(component, how);
    }

    void read(Work work) {
        if (work != null) {
            work.getSteps().stream().filter(step -> step.getText() != null && !ONLY_LOOKS.contains(step.getKind()))
                    .forEach(this::read);
        }
    }

    private void read(Step step) {
        var text = TextReferences.FORM.matcher(step.getText()).replaceAll(match -> match.group(2).replace('-', ' '));
        var low = text.toLowerCase(Locale.ROOT);
        var address = book.library().addressOf(step);
        var sort = step.getKind() == StepKind.MARK ? Optional.of(Sort.MARK)
                : WORDS.keySet().stream().filter(one -> WORDS.get(one).matcher(low).find()).findFirst();
        if (sort.isPresent() && address.isPresent()) {
            steps.add(new Disturbance(sort.get(), text, address.get()));
        }
        book.components().forEach((place, component) -> {
            if (isNamed(component, low)) {
                components.putIfAbsent(place, text);
            }
        });
    }

    /** Whether a text names a component by at least two words: a single word is too often another thing. */
    private static boolean isNamed(Component component, String text) {
        var head = HEAD.matcher(MachineBook.title(component).toLowerCase(Locale.ROOT)).replaceAll("");
        return head.contains(" ") && text.contains(head);
    }
}
