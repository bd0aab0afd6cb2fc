// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.benchlore.model.Answer;
import org.benchlore.model.ComebackReason;
import org.benchlore.model.JobRecord;
import org.benchlore.model.MeasuredValue;
import org.benchlore.model.Measurement;
import org.benchlore.model.Offer;
import org.benchlore.model.Round;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.model.Verdict;
import org.benchlore.plan.card.CardLine.Task;
import org.benchlore.plan.card.CardLine.Torque;
import org.benchlore.plan.card.CardLine.Value;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/** Says what a record still lacks when the job is to be closed, a sentence each, what can hurt somebody first. */
public final class Missing {

    private static final int MOST_NAMES = 3;

    private final Library library;
    private final JobRecord job;
    private final List<String> found = new ArrayList<>();

    private Missing(Library library, JobRecord job) {
        this.library = library;
        this.job = job;
    }

    /**
     * Looks through a record.
     *
     * @param library the library that the record refers to
     * @param job the record, perhaps a working copy
     * @param cards the cards of its rounds
     * @return sentences, none if nothing is missing
     */
    public static List<String> of(Library library, JobRecord job, List<Card> cards) {
        return new Missing(library, job).all(cards);
    }

    private List<String> all(List<Card> cards) {
        named("Still open by the record: ", Standing.before(library, job, job.getRounds().size()).open().stream()
                .map(this::access).toList());
        job.getRounds().forEach(this::failed);
        lastPlanned(cards).ifPresent(round -> card(round, cards.get(job.getRounds().indexOf(round))));
        customer();
        if (job.getVerification() == null || job.getVerification().isBlank()) {
            found.add("It is not written how the work was proved.");
        }
        if (job.getComebackOf() != null && job.getComebackReason() == ComebackReason.NOT_RECORDED) {
            found.add("It is a comeback, and it is not written why it came back.");
        }
        return List.copyOf(found);
    }

    private String access(String id) {
        return Standing.machine(library, job).flatMap(machine -> machine.getAccesses().stream()
                .filter(access -> access.getId().equals(id)).findFirst()).map(Titled::getTitle).orElse(id);
    }

    private void named(String words, List<String> names) {
        if (!names.isEmpty()) {
            found.add(words + names.stream().limit(MOST_NAMES).collect(Collectors.joining("; "))
                    + (names.size() > MOST_NAMES ? " and " + (names.size() - MOST_NAMES) + " more." : "."));
        }
    }

    /** A value that was measured again in a later round is judged there. */
    private void failed(Round round) {
        named("Not within limits in round " + (job.getRounds().indexOf(round) + 1) + ": ", round.getMeasured().stream()
                .filter(value -> value.getVerdict() == Verdict.FAIL && !isMeasuredLater(round, value)).map(this::words).toList());
    }

    private boolean isMeasuredLater(Round round, MeasuredValue value) {
        var asked = library.addressOf(value.getMeasurement());
        return asked.isPresent() && job.getRounds().stream().skip(job.getRounds().indexOf(round) + 1L)
                .anyMatch(later -> later.getMeasured().stream().anyMatch(it -> library.addressOf(it.getMeasurement()).equals(asked)));
    }

    private String words(MeasuredValue value) {
        var what = Optional.ofNullable(value.getWhat()).or(() -> library.resolve(value.getMeasurement())
                .filter(Measurement.class::isInstance).map(it -> ((Measurement) it).getWhat())).orElse("a value");
        return what + " " + value.getValue();
    }

    private Optional<Round> lastPlanned(List<Card> cards) {
        return job.getRounds().stream().filter(round -> {
            int index = job.getRounds().indexOf(round);
            return index < cards.size() && !cards.get(index).items().isEmpty();
        }).reduce((first, second) -> second);
    }

    private void card(Round round, Card card) {
        var lines = CardLines.of(library, card, round);
        named("Not ticked: ", Progress.open(library, round, lines.stream().filter(Task.class::isInstance).map(Task.class::cast)
                .toList()).stream().map(Task::title).toList());
        named("No torque written: ", lines.stream().filter(Torque.class::isInstance).map(Torque.class::cast)
                .filter(line -> round.getTightened().stream().noneMatch(it -> leads(it.getFastening(), line.at())))
                .map(line -> Optional.ofNullable(line.asked().getPlace()).orElse(line.at().id())).toList());
        named("No value written: ", lines.stream().filter(Value.class::isInstance).map(Value.class::cast)
                .filter(line -> round.getMeasured().stream().noneMatch(it -> leads(it.getMeasurement(), line.at())))
                .map(line -> Optional.ofNullable(line.asked().getWhat()).orElse(line.at().id())).toList());
    }

    private boolean leads(EObject reference, org.benchlore.model.Address place) {
        return library.addressOf(reference).filter(place::equals).isPresent();
    }

    private void customer() {
        named("Left in place, which nobody confirmed: ", job.getLeft().stream().filter(left -> left.getConfirmedBy() == null)
                .map(left -> title(left.getComponent(), left.getText())).toList());
        named("Offered without an answer: ", job.getOffers().stream().filter(offer -> offer.getAnswer() == Answer.OFFERED)
                .map(this::offered).toList());
    }

    private String offered(Offer offer) {
        return title(offer.getProcedure(), offer.getText());
    }

    private String title(EObject reference, String otherwise) {
        return library.resolve(reference).map(element -> element instanceof TopElement top ? top.getTitle()
                : element instanceof Titled titled ? titled.getTitle() : null).orElse(otherwise == null ? "something" : otherwise);
    }
}
