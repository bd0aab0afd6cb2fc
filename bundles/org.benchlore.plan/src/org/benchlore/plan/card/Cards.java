// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

import org.benchlore.model.Address;
import org.benchlore.model.JobRecord;
import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.Planner;
import org.benchlore.plan.search.PlanException;
import org.benchlore.store.Library;

/**
 * Plans the cards of jobs and remembers them until it is told to forget. Asking is quick and reads the record; planning
 * takes longer and reads the library only, so that another thread can do it.
 */
public final class Cards {

    private final Library library;
    private final Planner planner;
    private final Map<PlanRequest, Card> known = new ConcurrentHashMap<>();

    /**
     * Makes it.
     *
     * @param library the library that records refer to
     * @param planner makes the plans
     */
    public Cards(Library library, Planner planner) {
        this.library = library;
        this.planner = planner;
    }

    /**
     * Says what is to be planned for each round of a job.
     *
     * @param job the record, perhaps a working copy
     * @param today the day for rounds without one
     * @return one request a round; empty for a round that is planned for nothing
     */
    public List<Optional<PlanRequest>> requests(JobRecord job, LocalDate today) {
        return IntStream.range(0, job.getRounds().size()).mapToObj(index -> request(job, index, today)).toList();
    }

    private Optional<PlanRequest> request(JobRecord job, int index, LocalDate today) {
        var round = job.getRounds().get(index);
        var planned = round.getPlanned().stream().flatMap(it -> library.addressOf(it).stream()).map(Address::id).toList();
        var unit = library.addressOf(job.getUnit());
        if (planned.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        var before = Standing.before(library, job, index);
        var done = before.done().stream().filter(id -> !planned.contains(id)).toList();
        return Optional.of(new PlanRequest(unit.get().id(), planned, before.open(), done,
                Optional.ofNullable(round.getDate()).or(() -> Optional.ofNullable(job.getOpened())).orElse(today), Optional.empty()));
    }

    /**
     * Plans rounds.
     *
     * @param requests what {@link #requests} returned
     * @return one card a round
     */
    public List<Card> plan(List<Optional<PlanRequest>> requests) {
        return requests.stream().map(request -> request.map(this::plan).orElse(Card.NONE)).toList();
    }

    private Card plan(PlanRequest request) {
        return known.computeIfAbsent(request, this::made);
    }

    private Card made(PlanRequest request) {
        try {
            return new Card(Optional.of(planner.alone(request)), Optional.empty());
        } catch (PlanException e) {
            return new Card(Optional.empty(), Optional.of(e.getMessage()));
        }
    }

    /** Forgets all plans, since the library was changed. */
    public void forget() {
        known.clear();
    }
}
