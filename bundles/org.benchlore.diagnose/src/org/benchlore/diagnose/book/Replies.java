// SPDX-License-Identifier: EPL-2.0
package org.benchlore.diagnose.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.diagnose.Question.Reply;
import org.benchlore.diagnose.QuestionException;
import org.benchlore.model.Address;
import org.benchlore.model.Component;
import org.benchlore.model.MeasuredValue;
import org.benchlore.model.Measurement;
import org.benchlore.model.Round;
import org.benchlore.model.Verdict;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Finds the outcome that somebody's answer names, and those that the measured values of a job record tell. */
public final class Replies {

    private final Library library;
    private final List<Probe> probes;

    /**
     * An answer understood.
     *
     * @param probe the check
     * @param outcome what was found
     * @param recorded whether it was read from the job record
     * @param shown the answer as it is read
     */
    public record Answered(Probe probe, Probe.Outcome outcome, boolean recorded, String shown) {
    }

    /**
     * Makes a reader of answers.
     *
     * @param library the library
     * @param probes every check of the machine
     */
    public Replies(Library library, List<Probe> probes) {
        this.library = library;
        this.probes = probes;
    }

    /**
     * Understands an answer.
     *
     * @param reply as it was given
     * @return the check and what was found
     * @throws QuestionException if there is no such check or it has no such outcome
     */
    public Answered read(Reply reply) throws QuestionException {
        var named = probes.stream().filter(probe -> probe.address().id().equals(reply.check())
                || probe.procedure().address().id().equals(reply.check())).toList();
        if (named.isEmpty()) {
            throw new QuestionException("There is no check '" + reply.check()
                    + "' for this machine; 'diagnose' without --answer lists the checks with their ids");
        }
        var fitting = List.<Answered>of();
        for (int exact = 2; exact >= 0 && fitting.isEmpty(); exact--) {
            fitting = fitting(named, reply.result(), exact);
        }
        if (fitting.size() != 1) {
            throw new QuestionException("'" + reply.result() + "' is "
                    + (fitting.isEmpty() ? "no answer" : "not one answer") + " to '" + reply.check() + "': give one of "
                    + named.stream().flatMap(probe -> probe.outcomes().stream())
                            .map(outcome -> "'" + outcome.answer() + "' (" + outcome.id() + ")")
                            .collect(Collectors.joining(", ")));
        }
        return fitting.get(0);
    }

    private static List<Answered> fitting(List<Probe> named, String result, int exact) {
        return named.stream().flatMap(probe -> probe.outcomes().stream().filter(outcome -> fits(outcome, result, exact))
                .map(outcome -> new Answered(probe, outcome, false, outcome.answer()))).toList();
    }

    private static boolean fits(Probe.Outcome outcome, String result, int exact) {
        var given = result.strip().toLowerCase(Locale.ROOT);
        var answer = outcome.answer().toLowerCase(Locale.ROOT);
        return !given.isEmpty() && switch (exact) {
            case 2 -> outcome.id().equals(given) || answer.equals(given);
            case 1 -> answer.startsWith(given);
            default -> answer.contains(given);
        };
    }

    /**
     * Returns what measured values tell. What was measured before the part it speaks of was renewed tells nothing any more.
     *
     * @param rounds rounds of a job record
     * @return answers, the last of each check, in order
     */
    public List<Answered> recorded(List<Round> rounds) {
        var found = new ArrayList<Answered>();
        rounds.forEach(round -> {
            round.getDone().forEach(done -> found.removeIf(one -> isOf(one.outcome(), CaseNote.addresses(library, done.getRenewed()))));
            round.getMeasured().forEach(value -> recorded(value).ifPresent(one -> {
                found.removeIf(other -> other.probe().equals(one.probe()));
                found.add(one);
            }));
        });
        return List.copyOf(found);
    }

    /** Whether an outcome speaks for a cause in what was renewed, or only against causes in it. */
    private boolean isOf(Probe.Outcome outcome, Set<Address> renewed) {
        return outcome.points().stream().anyMatch(cause -> sitsIn(cause, renewed)) || outcome.points().isEmpty()
                && !outcome.against().isEmpty() && outcome.against().stream().allMatch(cause -> sitsIn(cause, renewed));
    }

    private boolean sitsIn(Address cause, Set<Address> renewed) {
        return library.element(cause).map(EObject::eContainer).stream()
                .flatMap(component -> Stream.iterate(component, Component.class::isInstance, EObject::eContainer))
                .anyMatch(one -> library.addressOf(one).filter(renewed::contains).isPresent());
    }

    private Optional<Answered> recorded(MeasuredValue value) {
        return library.resolve(value.getMeasurement()).filter(Measurement.class::isInstance).map(Measurement.class::cast)
                .flatMap(measurement -> probes.stream()
                        .filter(probe -> library.addressOf(measurement.eContainer()).filter(probe.address()::equals)
                                .isPresent())
                        .findFirst().flatMap(probe -> outcome(probe, value, measurement)
                                .map(outcome -> new Answered(probe, outcome, true, shown(value, measurement, outcome)))));
    }

    private static String shown(MeasuredValue value, Measurement measurement, Probe.Outcome outcome) {
        return (measurement.getWhat() == null ? "" : measurement.getWhat() + " ")
                + (value.getValue() == null ? "" : value.getValue() + ", ") + outcome.answer();
    }

    /** A value within its limits is the one outcome that points at nothing; one beyond them the one that points. */
    private static Optional<Probe.Outcome> outcome(Probe probe, MeasuredValue value, Measurement measurement) {
        if (value.getVerdict() == Verdict.NOT_RECORDED) {
            return Optional.empty();
        }
        boolean good = value.getVerdict() == Verdict.PASS;
        var fitting = probe.outcomes().stream().filter(outcome -> outcome.points().isEmpty() == good).toList();
        if (!good && fitting.size() > 1) {
            var side = isBelow(value, measurement) ? "below" : "above";
            fitting = fitting.stream().filter(outcome -> fits(outcome, side, 1)).toList();
        }
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    private static boolean isBelow(MeasuredValue value, Measurement measurement) {
        return value.getValue() != null && measurement.getLow() != null
                && value.getValue().dimension() == measurement.getLow().dimension()
                && value.getValue().compareMagnitude(measurement.getLow()) < 0;
    }
}
