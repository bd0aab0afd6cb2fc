// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.jobs.card;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.edit.job.Recorded;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Round;
import org.benchlore.model.Verdict;
import org.benchlore.page.Labels;
import org.benchlore.plan.card.Card;
import org.benchlore.plan.card.CardLine;
import org.benchlore.plan.card.CardLines;
import org.benchlore.store.Library;
import org.eclipse.osgi.util.NLS;

/** What stands in the tree of a job, and in which words. */
final class Nodes {

    private final Library library;
    private final JobRecord job;
    private final List<Card> cards;

    Nodes(Library library, JobRecord job, List<Card> cards) {
        this.library = library;
        this.job = job;
        this.cards = cards;
    }

    List<Node> top() {
        var all = new ArrayList<Node>();
        for (var part : Node.Part.values()) {
            if (part == Node.Part.LEFT) {
                job.getRounds().forEach(round -> all.add(new Node.OfRound(round, job.getRounds().indexOf(round) + 1)));
            }
            all.add(new Node.Fields(part));
        }
        return all;
    }

    List<Node> below(Node node) {
        if (!(node instanceof Node.OfRound round) || round.number() > cards.size()) {
            return List.of();
        }
        var all = new ArrayList<Node>();
        var boxes = new ArrayList<CardLine>();
        for (var line : CardLines.of(library, cards.get(round.number() - 1), round.round())) {
            if (line instanceof CardLine.Value || line instanceof CardLine.Torque) {
                boxes.add(line);
            } else if (line instanceof CardLine.Task task) {
                all.add(new Node.OfTask(round.round(), task, List.copyOf(boxes)));
                boxes.clear();
            }
        }
        return all;
    }

    boolean isTicked(Node.OfTask node) {
        return new Recorded(library).done(node.round(), DoneBox.line(node.task())).isPresent();
    }

    String words(Node node) {
        if (node instanceof Node.OfTask task) {
            return (isTicked(task) ? "✓  " : "○  ") + task.task().title();
        }
        if (node instanceof Node.OfRound round) {
            return NLS.bind(Messages.round, new Object[] {round.number(), Labels.of(round.round().getKind()),
                    round.round().getDate() == null ? "" : round.round().getDate()}).strip();
        }
        return ((Node.Fields) node).part().words();
    }

    /** What is filled in or lacks, in few words. */
    String remark(Node node) {
        if (node instanceof Node.OfTask task) {
            return new Recorded(library).done(task.round(), DoneBox.line(task.task()))
                    .map(done -> done.getMinutes() == null ? "" : done.getMinutes().toString())
                    .orElseGet(() -> task.task().minutes().usual() == 0 ? ""
                            : NLS.bind(Messages.plannedMinutes, task.task().minutes().usual()))
                    + (isFailed(task) ? "  " + Messages.notWithin : "");
        }
        if (node instanceof Node.OfRound round) {
            return remark(round);
        }
        return switch (((Node.Fields) node).part()) {
            case ARRIVAL -> job.getUnit() == null ? Messages.unitMissing : "";
            case SAVED -> job.getSaved().isEmpty() ? "" : String.valueOf(job.getSaved().size());
            case LEFT -> open(job.getLeft().stream().filter(left -> left.getConfirmedBy() == null).count(), Messages.toConfirm);
            case OFFERS -> open(job.getOffers().stream().filter(offer -> offer.getAnswer() == org.benchlore.model.Answer.OFFERED)
                    .count(), Messages.toAnswer);
            case ENDED -> job.getVerification() == null ? Messages.proofMissing : "";
        };
    }

    private static String open(long count, String words) {
        return count == 0 ? "" : NLS.bind(words, count);
    }

    private String remark(Node.OfRound round) {
        var card = round.number() <= cards.size() ? cards.get(round.number() - 1) : Card.NONE;
        if (card.problem().isPresent()) {
            return Messages.noPlan;
        }
        var tasks = below(round);
        long done = tasks.stream().filter(task -> isTicked((Node.OfTask) task)).count();
        return tasks.isEmpty() ? "" : NLS.bind(Messages.ticked, done, tasks.size());
    }

    private boolean isFailed(Node.OfTask task) {
        var recorded = new Recorded(library);
        return task.boxes().stream().filter(CardLine.Value.class::isInstance).map(CardLine.Value.class::cast)
                .anyMatch(line -> recorded.measured(task.round(), line.at()).filter(value -> value.getVerdict() == Verdict.FAIL)
                        .isPresent());
    }

    /** Rounds that cannot be planned, with why. */
    List<String> problems() {
        return cards.stream().flatMap(card -> card.problem().stream()).toList();
    }

    static Round last(JobRecord job) {
        return job.getRounds().isEmpty() ? null : job.getRounds().get(job.getRounds().size() - 1);
    }
}
