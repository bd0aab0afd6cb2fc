// SPDX-License-Identifier: EPL-2.0
package org.benchlore.evidence;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.benchlore.model.Address;
import org.benchlore.store.KindFacts;
import org.benchlore.store.KindFacts.NoteFacts;
import org.benchlore.store.Row;

/**
 * Finds the note whose tally speaks of a component. Of several the one over the most jobs counts, since they are most
 * likely about the same jobs.
 */
final class Tallies {

    private static final Set<String> SPENT = Set.of("RULED_OUT", "SUPERSEDED");
    private static final int CLOSE_DAYS = 31;

    private final Knowledge knowledge;

    Tallies(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * A tally and the time it speaks for.
     *
     * @param prior the tally without what job records speak for
     * @param from first day, or the earliest there is
     * @param until last day
     * @param job path of the job that the note belongs to, if it does
     */
    record Span(Prior.Tally prior, LocalDate from, LocalDate until, Optional<String> job) {

        boolean covers(Event event) {
            return job.filter(event.job()::equals).isPresent()
                    || !event.from().isBefore(from) && !event.from().isAfter(until);
        }
    }

    Optional<Span> of(Address component, LocalDate today) {
        return knowledge.notes(component).filter(row -> !SPENT.contains(row.status()) && isAbout(row, component))
                .map(row -> span(row, today)).flatMap(Optional::stream)
                .max(Comparator.comparingInt((Span span) -> span.prior().ofAbout())
                        .thenComparing(Span::until).thenComparing(span -> span.prior().note()));
    }

    /** A note may name several components; it is about the one it gives, or the one of its cause. */
    private boolean isAbout(Row row, Address component) {
        var own = facts(row).component().or(() -> row.cause().flatMap(knowledge::componentOfCause));
        return own.filter(component::equals).isPresent();
    }

    private Optional<Span> span(Row row, LocalDate today) {
        var tally = facts(row).tally().orElseThrow();
        if (tally.ofAbout() == 0) {
            return Optional.empty();
        }
        var until = row.date().orElse(today);
        int recorded = (int) tally.sightings().stream().filter(one -> one.date().filter(until::isBefore).isPresent()
                && isRecorded(one)).count();
        var prior = new Prior.Tally(row.address(), Math.max(0, tally.count() - recorded), tally.ofAbout());
        var from = tally.since() == 0 ? LocalDate.MIN : LocalDate.of(tally.since(), 1, 1);
        return Optional.of(new Span(prior, from, until, facts(row).job().map(Address::path)));
    }

    /** Tells whether a job record of the unit speaks for a sighting. */
    private boolean isRecorded(KindFacts.Sighting sighting) {
        var day = sighting.date().orElseThrow();
        return sighting.unit().map(knowledge::jobs).orElse(List.of()).stream().anyMatch(job -> {
            var opened = job.date().orElseThrow();
            var closed = Blame.facts(job).closed().orElse(opened);
            return !day.isBefore(opened.minusDays(CLOSE_DAYS)) && !day.isAfter(closed.plusDays(CLOSE_DAYS));
        });
    }

    private static NoteFacts facts(Row row) {
        return row.facts(NoteFacts.class).orElseThrow();
    }
}
