// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Answer;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.Kind;
import org.benchlore.plan.card.Card;
import org.benchlore.plan.card.Cards;
import org.benchlore.plan.card.Progress;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.workshop.OpenLibrary;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Collects the jobs, the latest first; plans the cards of those that are not closed, so not for the window's thread. */
final class JobLines {

    private static final int MOST_NAMES = 2;

    private final Library library;
    private final Cards cards;

    JobLines(OpenLibrary opened) {
        this.library = opened.library();
        this.cards = new Cards(library, opened.planner());
    }

    List<JobLine> all(LocalDate today) {
        return library.catalogue().rows(Kind.JOB).sorted(Comparator.comparing((Row row) -> row.date().orElse(LocalDate.MIN))
                .reversed().thenComparing(Row::title)).map(row -> line(row, today)).toList();
    }

    private JobLine line(Row row, LocalDate today) {
        var unit = row.job().flatMap(job -> job.unit()).flatMap(library.catalogue()::at).map(Row::title).orElse("");
        if (row.status().equals("CLOSED")) {
            return new JobLine(row, unit, "", "");
        }
        return library.top(row.id()).filter(JobRecord.class::isInstance).map(JobRecord.class::cast)
                .map(job -> line(row, unit, job, cards.plan(cards.requests(job, today))))
                .orElseGet(() -> new JobLine(row, unit, "", ""));
    }

    private JobLine line(Row row, String unit, JobRecord job, List<Card> planned) {
        var progress = Progress.of(library, job, planned);
        var next = progress.all() == 0 ? planned.stream().flatMap(card -> card.problem().stream()).findFirst().orElse(Messages.planIt)
                : progress.next().map(title -> NLS.bind(Messages.next, new Object[] {title, progress.done(), progress.all()}))
                        .orElse(Messages.closeIt);
        return new JobLine(row, unit, waits(job, planned), next);
    }

    private String waits(JobRecord job, List<Card> planned) {
        if (job.getState() == JobState.WAITING_FOR_ANSWER) {
            return names(Messages.answerAbout, job.getOffers().stream().filter(offer -> offer.getAnswer() == Answer.OFFERED)
                    .map(offer -> title(offer.getProcedure()).orElse(offer.getText() == null ? "" : offer.getText())));
        }
        return job.getState() == JobState.WAITING_FOR_PARTS ? names(Messages.parts, planned.stream()
                .reduce((first, second) -> second).stream().flatMap(card -> card.plan().stream())
                .flatMap(plan -> plan.parts().stream()).filter(line -> !line.isOnlyIfFound() && line.isMissing())
                .map(line -> line.part().map(ElementTitle::of).orElse(line.id()))) : "";
    }

    private Optional<String> title(EObject reference) {
        return library.addressOf(reference).flatMap(library.catalogue()::at).map(Row::title);
    }

    private static String names(String words, Stream<String> names) {
        var all = names.filter(name -> !name.isEmpty()).toList();
        return all.isEmpty() ? "" : NLS.bind(words, all.stream().limit(MOST_NAMES).collect(Collectors.joining(", "))
                + (all.size() > MOST_NAMES ? " +" + (all.size() - MOST_NAMES) : ""));
    }
}
