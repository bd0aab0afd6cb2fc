// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;

import org.benchlore.diagnose.Named;
import org.benchlore.diagnose.book.Openings.Opening;
import org.benchlore.measure.Quantity;
import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Kind;
import org.benchlore.model.Procedure;
import org.benchlore.model.ProcedureKind;
import org.benchlore.model.Status;
import org.benchlore.model.Step;
import org.benchlore.model.WeightKind;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.TextReferences;

/**
 * The checks of a machine: every step that may be found one way or another, of any procedure for it, and the check in
 * words of each cause that no step proves. What a service or a teach-in shows by the way, and the book does not name as a
 * check, is no proof where it has words for a look: a battery is not tested by a service of an hour and a half.
 */
public final class Probes {

    /** The answers to a cause's own check. */
    public static final String YES = "yes";
    /** The other answer to a cause's own check. */
    public static final String NO = "no";

    /** Work that shows a fault by the way: nobody does it to look. */
    private static final Set<ProcedureKind> BY_THE_WAY = Set.of(ProcedureKind.SERVICE, ProcedureKind.TEACH_IN);
    private static final Set<ProcedureKind> CHANGES = Set.of(ProcedureKind.RENEW, ProcedureKind.OVERHAUL);

    private final Library library;
    private final MachineBook book;
    private final Openings openings;
    private final Weights weights;
    private final List<Probe> all = new ArrayList<>();
    private final List<Probe> offered = new ArrayList<>();
    private final Set<Address> changing = new HashSet<>();
    private final Set<Address> byTheWay = new HashSet<>();
    private final Map<Address, Address> checks = new HashMap<>();
    private final Set<Address> worded = new HashSet<>();

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
        book.causes().forEach((address, cause) -> library.addressOf(cause.getCheck()).ifPresent(check -> checks.put(address, check)));
        library.catalogue().rows(Kind.PROCEDURE).filter(row -> row.machines().contains(book.address()))
                .filter(row -> !row.status().equals(Status.WITHDRAWN.getLiteral()))
                .forEach(row -> library.top(row.id()).ifPresent(top -> read(row.address(), (Procedure) top)));
        book.causes().forEach((address, cause) -> read(address, cause, offered.stream()
                .noneMatch(probe -> probe.finds().contains(address) && proves(probe, address))));
    }

    private boolean proves(Probe probe, Address cause) {
        return !byTheWay.contains(probe.procedure().address()) || probe.procedure().address().equals(checks.get(cause));
    }

    /**
     * Tells whether somebody would make a check to look for a cause.
     *
     * @param probe a check
     * @param cause a cause that it may find
     * @return false if it shows the cause by the way only, and the book has words for a look
     */
    public boolean isLook(Probe probe, Address cause) {
        return proves(probe, cause) || !worded.contains(cause);
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
        if (BY_THE_WAY.contains(procedure.getKind())) {
            byTheWay.add(address);
        }
        for (var way : procedure.getWays()) {
            if (way.getWork() != null) {
                openings.of(way).ifPresent(opening ->
                        read(new Named(address, title(procedure, address)), procedure, way.getWork(), opening));
            }
        }
    }

    private static String title(Procedure procedure, Address address) {
        return procedure.getTitle() == null ? address.id() : procedure.getTitle();
    }

    private void read(Named named, Procedure procedure, Work work, Opening opening) {
        var steps = work.getSteps().stream().filter(step -> outcomes(step).stream().anyMatch(Probe.Outcome::tells)).toList();
        var written = work.getMinutesUsual() == null ? procedure.getWholeJobUsual() : work.getMinutesUsual();
        var minutes = written == null ? weights.of(WeightKind.CHECK_MINUTES) : written.minutes();
        var opens = names(opening);
        opens.add(named.address().toString());
        for (var step : steps) {
            var text = text(step.getText(), work.getSteps());
            library.addressOf(step).map(address -> new Probe(address, named, text, outcomes(step), opens,
                    1, Math.max(0, minutes - steps.size()), written != null, named(opening))).ifPresent(probe -> {
                        all.add(probe);
                        if (!CHANGES.contains(procedure.getKind())) {
                            offered.add(probe);
                        }
                    });
        }
    }

    private static Set<String> names(Opening opening) {
        return opening.name().isEmpty() ? new LinkedHashSet<>() : new LinkedHashSet<>(Set.of(opening.name()));
    }

    private List<Named> named(Opening opening) {
        return opening.accesses().stream().map(book::named).flatMap(Optional::stream).toList();
    }

    private List<Probe.Outcome> outcomes(Step step) {
        return step.getOutcomes().stream().map(outcome -> new Probe.Outcome(outcome.getId(),
                outcome.getAnswer() == null ? outcome.getId() : outcome.getAnswer(),
                CaseNote.addresses(library, outcome.getPoints()), CaseNote.addresses(library, outcome.getAgainst())))
                .toList();
    }

    /** Where the book names a procedure that proves it, that is opened for and timed; else the component is looked at. */
    private void read(Address address, Cause cause, boolean unproved) {
        var proof = library.resolve(cause.getCheck()).filter(Procedure.class::isInstance).map(Procedure.class::cast);
        var words = cause.getCheckText() == null || cause.getCheckText().isBlank()
                ? proof.map(Procedure::getTitle).orElse("") : cause.getCheckText();
        if (words.isBlank()) {
            return;
        }
        var way = proof.flatMap(procedure -> procedure.getWays().stream().findFirst());
        var opening = way.flatMap(openings::of).orElseGet(() -> openings.of((Component) cause.eContainer()));
        var written = way.map(Way::getWork).map(Work::getMinutesUsual).or(() -> proof.map(Procedure::getWholeJobUsual));
        var probe = new Probe(address, new Named(address, MachineBook.title(cause)), text(words, List.of()),
                List.of(new Probe.Outcome(YES, YES, Set.of(address), Set.of()),
                        new Probe.Outcome(NO, NO, Set.of(), Set.of(address))),
                names(opening), Math.max(1, written.map(Quantity::minutes).map(Long::doubleValue)
                        .orElseGet(() -> weights.of(WeightKind.CHECK_MINUTES))), 0, written.isPresent(), named(opening));
        all.add(probe);
        if (unproved) {
            worded.add(address);
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
