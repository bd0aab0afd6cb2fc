// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;

import org.benchlore.diagnose.Named;
import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Status;
import org.benchlore.model.Step;
import org.benchlore.model.WeightKind;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.TextReferences;

/**
 * The checks of a machine: every step that may be found one way or another, of any procedure for it, and the check in
 * words of each cause that no step of a procedure without renewing proves.
 */
public final class Probes {

    /** The answers to a cause's own check. */
    public static final String YES = "yes";
    /** The other answer to a cause's own check. */
    public static final String NO = "no";

    private static final Set<ProcedureKind> CHANGES = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);

    private final Library library;
    private final MachineBook book;
    private final Openings openings;
    private final Weights weights;
    private final List<Probe> all = new ArrayList<>();
    private final List<Probe> offered = new ArrayList<>();
    private final Set<Address> changing = new HashSet<>();

    /**
     * Reads the checks of a machine.
     *
     * @param book the machine
     * @param openings what must be open
     * @param weights gives the minutes of a check without a time
     */
    public Probes(MachineBook book, Openings openings, Weights weights) {
        this.library = book.library();
        this.book = book;
        this.openings = openings;
        this.weights = weights;
        library.catalogue().rows(Kind.PROCEDURE).filter(row -> row.machines().contains(book.address()))
                .filter(row -> !row.status().equals(Status.WITHDRAWN.getLiteral()))
                .forEach(row -> library.top(row.id()).ifPresent(top -> read(row.address(), (Procedure) top)));
        var proved = new HashSet<Address>();
        offered.forEach(probe -> proved.addAll(probe.finds()));
        book.causes().forEach((address, cause) -> read(address, cause, !proved.contains(address)));
    }

    /**
     * Returns every check, those within work that renews as well: answers may name any.
     *
     * @return the checks
     */
    public List<Probe> all() {
        return List.copyOf(all);
    }

    /**
     * Returns the checks that can be made without renewing anything.
     *
     * @return the checks
     */
    public List<Probe> offered() {
        return List.copyOf(offered);
    }

    /**
     * Returns the procedures that renew or overhaul.
     *
     * @return their addresses
     */
    public Set<Address> changing() {
        return Set.copyOf(changing);
    }

    private void read(Address address, Procedure procedure) {
        if (CHANGES.contains(procedure.getKind())) {
            changing.add(address);
        }
        for (var way : procedure.getWays()) {
            if (way.getWork() != null) {
                read(new Named(address, title(procedure, address)), procedure, way.getWork());
            }
        }
    }

    private static String title(Procedure procedure, Address address) {
        return procedure.getTitle() == null ? address.id() : procedure.getTitle();
    }

    private void read(Named named, Procedure procedure, Work work) {
        var steps = work.getSteps().stream().filter(step -> outcomes(step).stream().anyMatch(Probe.Outcome::tells)).toList();
        var written = work.getMinutesUsual() == null ? procedure.getWholeJobUsual() : work.getMinutesUsual();
        var minutes = written == null ? weights.of(WeightKind.CHECK_MINUTES) : written.minutes();
        var accesses = openings.of(procedure);
        for (var step : steps) {
            var opens = names(accesses);
            opens.add(named.address().toString());
            var text = text(step.getText(), work.getSteps());
            library.addressOf(step).map(address -> new Probe(address, named, text, outcomes(step), opens,
                    1, Math.max(0, minutes - steps.size()), written != null, named(accesses))).ifPresent(probe -> {
                        all.add(probe);
                        if (!CHANGES.contains(procedure.getKind())) {
                            offered.add(probe);
                        }
                    });
        }
    }

    private Set<String> names(Set<Access> accesses) {
        var names = new LinkedHashSet<String>();
        accesses.forEach(access -> names.add(openings.name(access).toString()));
        return names;
    }

    private List<Named> named(Set<Access> accesses) {
        return accesses.stream().map(book::named).flatMap(Optional::stream).toList();
    }

    private List<Probe.Outcome> outcomes(Step step) {
        return step.getOutcomes().stream().map(outcome -> new Probe.Outcome(outcome.getId(),
                outcome.getAnswer() == null ? outcome.getId() : outcome.getAnswer(),
                CaseNote.addresses(library, outcome.getPoints()), CaseNote.addresses(library, outcome.getAgainst())))
                .toList();
    }

    private void read(Address address, Cause cause, boolean unproved) {
        if (cause.getCheckText() == null || cause.getCheckText().isBlank()) {
            return;
        }
        var accesses = openings.of((Component) cause.eContainer());
        var probe = new Probe(address, new Named(address, MachineBook.title(cause)), text(cause.getCheckText(), List.of()),
                List.of(new Probe.Outcome(YES, YES, Set.of(address), Set.of()),
                        new Probe.Outcome(NO, NO, Set.of(), Set.of(address))),
                names(accesses), weights.of(WeightKind.CHECK_MINUTES), 0, false, named(accesses));
        all.add(probe);
        if (unproved) {
            offered.add(probe);
        }
    }

    /** A text as it is read: steps of the same work by their numbers, all else by its title. */
    private String text(String text, List<Step> steps) {
        var numbered = text == null ? "" : TextReferences.FORM.matcher(text).replaceAll(match -> Matcher.quoteReplacement(
                steps.stream().filter(step -> match.group(2).equals(step.getId())).findFirst()
                        .map(step -> "step " + (steps.indexOf(step) + 1)).orElse(match.group())));
        return TextReferences.plain(numbered, library.catalogue()).strip();
    }
}
