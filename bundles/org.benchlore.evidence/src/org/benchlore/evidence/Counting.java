// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.benchlore.model.Address;

/** Answers one question over the jobs. */
final class Counting {

    private static final int LAST_MONTH = 12;
    private static final int LAST_DAY = 31;
    private static final double PERCENT = 100;

    private final Knowledge knowledge;
    private final CountingRules rules;
    private final Question question;
    private final int window;

    Counting(Knowledge knowledge, CountingRules rules, Question question) {
        this.knowledge = knowledge;
        this.rules = rules;
        this.question = question;
        this.window = Math.min(rules.followMonths(), question.horizonMonths().orElse(rules.followMonths()));
    }

    Findings answer() {
        var component = question.component();
        var others = knowledge.family(component);
        var own = histories(component);
        var related = others.stream().flatMap(other -> histories(other).stream()).toList();
        var span = tally(own);
        var prior = prior(span);
        var left = count(own, related, UnitHistory::left, question.oldPart(), span);
        var renewed = count(own, related, UnitHistory::renewed, question.newPart(), Optional.empty());
        var trouble = new Prior.Figure(rules.renewTroublePercent() / PERCENT, false);
        return new Findings(left, prior, prior.estimate(rules).with(left.weightOfFailed(), left.weightOf()), renewed,
                trouble.estimate(rules).with(renewed.weightOfFailed(), renewed.weightOf()));
    }

    private Prior prior(Optional<Tallies.Span> span) {
        if (question.wear().isPresent()) {
            return new Prior.Figure(question.wear().getAsDouble(), true);
        }
        return span.isPresent() ? span.get().prior() : new Prior.Nothing();
    }

    private List<UnitHistory> histories(Address component) {
        var blame = new Blame(knowledge::componentOfCause);
        var fitting = knowledge.parts(component);
        var histories = new ArrayList<UnitHistory>();
        for (var unit : knowledge.units(component)) {
            histories.add(new UnitHistory(knowledge.jobs(unit), component, blame, fitting, end(unit)));
        }
        return histories;
    }

    /** A unit is followed until today, or to the end of the year until which it is kept. */
    private LocalDate end(Address unit) {
        int year = knowledge.keptUntil(unit);
        var kept = year == 0 ? question.today() : LocalDate.of(year, LAST_MONTH, LAST_DAY);
        return kept.isBefore(question.today()) ? kept : question.today();
    }

    /** A tally speaks for the number before a break, and not where the job records of its time are as many. */
    private Optional<Tallies.Span> tally(List<UnitHistory> own) {
        if (question.oldPart().filter(knowledge::isSuccessor).isPresent()) {
            return Optional.empty();
        }
        return new Tallies(knowledge).of(question.component(), question.today()).filter(span -> own.stream()
                .flatMap(history -> history.left().stream()).filter(event -> span.covers(event) && counts(event)
                        && isOf(event, question.oldPart())).count() < span.prior().ofAbout());
    }

    private Counts count(List<UnitHistory> own, List<UnitHistory> related, Function<UnitHistory, List<Event>> which,
            Optional<Address> part, Optional<Tallies.Span> span) {
        var counts = Counts.NONE;
        for (var history : own) {
            for (var event : which.apply(history)) {
                counts = span.filter(tally -> tally.covers(event)).isPresent() && isOf(event, part)
                        ? counts.plusInTally() : add(counts, event, part, 1);
            }
        }
        for (var history : related) {
            for (var event : which.apply(history)) {
                counts = add(counts, event, part, rules.familyWeight());
            }
        }
        return counts;
    }

    private Counts add(Counts counts, Event event, Optional<Address> part, double weight) {
        if (!isOf(event, part)) {
            return event.part().isPresent() ? counts.plusOtherNumber() : counts.plusNumberUnknown();
        }
        return counts(event) ? counts.plus(event.failed(window), weight) : counts.plusNotFollowed();
    }

    private boolean counts(Event event) {
        return event.failed(window) || event.followed(window);
    }

    /** Evidence follows the number; where a part was never superseded, a job that names none is of it. */
    private boolean isOf(Event event, Optional<Address> part) {
        return part.isEmpty() || (event.part().isPresent() ? event.part().equals(part)
                : !knowledge.isInChain(part.get()));
    }
}
