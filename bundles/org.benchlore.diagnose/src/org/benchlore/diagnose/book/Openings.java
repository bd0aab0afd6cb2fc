// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.benchlore.diagnose.order.AccessCost;
import org.benchlore.model.Access;
import org.benchlore.model.Component;
import org.benchlore.model.Way;
import org.benchlore.plan.OpeningTimes;
import org.benchlore.plan.search.PlanException;

/** What must be open for checks, as a plan would open it: for all of them together, what several need once. */
public final class Openings {

    private final MachineBook book;
    private final OpeningTimes times;
    private final Map<String, Opening> known = new TreeMap<>();
    private final Map<Set<String>, Double> together = new HashMap<>();
    private final List<String> lacks = new ArrayList<>();

    /**
     * What must be open for one thing.
     *
     * @param name what it is called in costs, the same for the same needs; empty if nothing must be opened
     * @param needs for each need the ids of accesses, any one of which will do
     * @param accesses what is opened if it is the only thing
     */
    public record Opening(String name, List<List<String>> needs, List<Access> accesses) {

        static final Opening NOTHING = new Opening("", List.of(), List.of());
    }

    /**
     * Makes the openings of a machine.
     *
     * @param book the machine
     */
    public Openings(MachineBook book) {
        this.book = book;
        try {
            this.times = new OpeningTimes(book.library(), book.machine());
        } catch (PlanException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /**
     * Returns what must be open for a way of a procedure.
     *
     * @param way a way
     * @return the opening, or empty if the way is for other machines only
     */
    public Optional<Opening> of(Way way) {
        return times.needs(way.getNeeds()).map(this::opening);
    }

    /**
     * Returns what must be open to look at a component: the nearest opening of what it is part of.
     *
     * @param component a component of the machine
     * @return the opening, of nothing if nothing must be opened as far as the book tells
     */
    public Opening of(Component component) {
        for (var place : book.upwards(component)) {
            var access = book.accesses().stream().filter(one -> book.library().addressOf(one.getComponent())
                    .filter(place::equals).isPresent()).findFirst();
            if (access.isPresent()) {
                return opening(List.of(List.of(access.get().getId())));
            }
        }
        return Opening.NOTHING;
    }

    private Opening opening(List<List<String>> needs) {
        var name = String.join(" and ", needs.stream().map(any -> String.join(" or ", any.stream().sorted().toList()))
                .sorted().distinct().toList());
        return needs.isEmpty() ? Opening.NOTHING : known.computeIfAbsent(name, any -> new Opening(name, needs, alone(needs)));
    }

    /** What cannot be opened as the book has it costs nothing here, and the answer says so. */
    private List<Access> alone(List<List<String>> needs) {
        try {
            return times.open(List.of(needs)).accesses().stream().distinct().toList();
        } catch (PlanException e) {
            lacks.add("The time to open for a check is not counted: " + e.getMessage().replaceFirst("^'check 0'", "it") + ".");
            return List.of();
        }
    }

    /**
     * Returns what opening costs, with more that is shared.
     *
     * @param shared minutes of other things that are done once for several checks, by name
     * @return costs of openings, called by their names, as the plan opens for all of them, and of each of the others once
     */
    public AccessCost costs(Map<String, Double> shared) {
        var more = AccessCost.sum(shared);
        return wanted -> {
            var openings = new HashSet<>(wanted);
            openings.retainAll(known.keySet());
            return more.minutes(wanted) + together.computeIfAbsent(openings, this::minutes);
        };
    }

    private double minutes(Set<String> names) {
        var openings = names.stream().sorted().map(known::get).filter(one -> !one.accesses().isEmpty()).map(Opening::needs)
                .toList();
        try {
            return openings.isEmpty() ? 0 : times.open(openings).minutes();
        } catch (PlanException e) {
            return openings.size() == 1 ? 0 : names.stream().mapToDouble(name -> minutes(Set.of(name))).sum();
        }
    }

    /**
     * Returns what stands in the way of counting.
     *
     * @return sentences, none if everything can be opened
     */
    public List<String> lacks() {
        return lacks.stream().distinct().toList();
    }
}
