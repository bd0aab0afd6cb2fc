// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.benchlore.plan.PlanRequest;
import org.benchlore.plan.card.Card;
import org.benchlore.plan.card.Cards;
import org.benchlore.ui.LatestJob;
import org.benchlore.ui.WindowThread;

/** Plans the cards of a job's rounds beside the window's thread, each time the record asks for others. */
final class Planning {

    private record Asked(List<Optional<PlanRequest>> requests) {
    }

    private final Tools tools;
    private final Cards planner;
    private final LatestJob<Asked, List<Card>> job;
    private Optional<List<Optional<PlanRequest>>> asked = Optional.empty();
    private List<Card> cards = List.of();

    Planning(Tools tools, WindowThread thread, Runnable changed) {
        this.tools = tools;
        this.planner = new Cards(tools.library(), tools.opened().planner());
        this.job = new LatestJob<>(Messages.planning, question -> planner.plan(question.requests()), thread, (question, answer) -> {
            cards = answer;
            changed.run();
        });
    }

    /** The cards as far as they are planned, one a round. */
    List<Card> cards() {
        return cards;
    }

    void refresh() {
        var requests = planner.requests(tools.job(), LocalDate.now());
        if (asked.filter(requests::equals).isEmpty()) {
            asked = Optional.of(requests);
            job.ask(new Asked(requests), 0);
        }
    }

    /** The library was changed: what was planned from it may be another plan now. */
    void again() {
        planner.forget();
        asked = Optional.empty();
        refresh();
    }

    void dispose() {
        job.forget();
    }
}
