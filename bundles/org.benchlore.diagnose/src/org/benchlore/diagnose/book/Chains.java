// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.diagnose.Finding;
import org.benchlore.diagnose.FunctionChain;
import org.benchlore.diagnose.Named;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.Function;

/** Tells which function fails and what belongs to its chain. */
public final class Chains {

    private static final double BY_WORD = 0.5;
    private static final double BY_PART = 4;

    private final MachineBook book;
    private final SymptomWords words;

    /**
     * Makes the chains of a machine.
     *
     * @param book the machine
     * @param words compares texts
     */
    public Chains(MachineBook book, SymptomWords words) {
        this.book = book;
        this.words = words;
    }

    /**
     * Returns the function that fails: the one to whose chain what the findings lead to belongs most and that has least
     * besides; its own words decide between the rest.
     *
     * @param findings what was found
     * @param suspected components that the findings lead to, each with how strongly
     * @return the function, or empty if nothing names one
     */
    public Optional<Function> failing(List<Finding> findings, Map<Component, Double> suspected) {
        return book.functions().stream().filter(function -> score(function, findings, suspected) > 0)
                .max(Comparator.comparingDouble((Function function) -> score(function, findings, suspected))
                        .thenComparing(function -> -members(function).size()));
    }

    private double score(Function function, List<Finding> findings, Map<Component, Double> suspected) {
        var words = findings.stream().mapToLong(finding -> this.words.shared(MachineBook.title(function),
                finding.label())).sum();
        var all = suspected.values().stream().mapToDouble(weight -> weight).sum();
        var inside = suspected.keySet().stream().filter(component -> book.isIn(component, function)).toList();
        if (inside.isEmpty()) {
            return BY_WORD * words;
        }
        return BY_WORD * words + BY_PART * inside.stream().mapToDouble(suspected::get).sum() / all
                + (double) inside.size() / members(function).size();
    }

    List<Component> members(Function function) {
        return book.components().values().stream().filter(component -> book.isIn(component, function)).toList();
    }

    /**
     * Returns a function's chain and what of it was renewed.
     *
     * @param function the function
     * @param work the work just done, if any
     * @param jobs jobs on the unit, the earliest first
     * @return the chain
     */
    public FunctionChain chain(Function function, Optional<WorkDone> work, List<CaseJob> jobs) {
        var members = new ArrayList<FunctionChain.Member>();
        for (var component : members(function)) {
            var upwards = book.upwards(component);
            var when = work.filter(done -> done.renewed(upwards)).map(done -> done.work().title())
                    .or(() -> lastJob(upwards, jobs));
            book.named(component).ifPresent(named -> members.add(
                    new FunctionChain.Member(named, when.isPresent(), when.orElse(""), causes(component))));
        }
        return new FunctionChain(book.named(function).orElseThrow(), function.getText() == null ? "" : function.getText(),
                List.copyOf(members));
    }

    /** A member's own causes; of what it is made of too, unless that is a member by itself. */
    private List<Named> causes(Component component) {
        var all = new ArrayList<Named>();
        component.getCauses().forEach(cause -> book.named(cause).ifPresent(all::add));
        component.getComponents().stream().filter(part -> part.getFunctions().isEmpty()).forEach(part -> all.addAll(causes(part)));
        return all;
    }

    private static Optional<String> lastJob(List<Address> upwards, List<CaseJob> jobs) {
        return jobs.stream().filter(job -> upwards.stream().anyMatch(job.renewed()::contains))
                .reduce((earlier, later) -> later)
                .map(job -> job.day().map(day -> day.date() + ": ").orElse("") + job.title());
    }
}
