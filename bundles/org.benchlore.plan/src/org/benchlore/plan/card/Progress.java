// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.model.DoneWork;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Round;
import org.benchlore.plan.PlanItem.Part;
import org.benchlore.plan.card.CardLine.Task;
import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EObject;

/**
 * How far a job is by its cards.
 *
 * @param done how many lines are ticked
 * @param all how many lines there are to tick
 * @param next title of the first line that is not ticked; empty if all are
 */
public record Progress(int done, int all, Optional<String> next) {

    /**
     * Counts. What an earlier round left undone is not to be done any more: the round after it was planned anew.
     *
     * @param library the library that the record refers to
     * @param job the record, perhaps a working copy
     * @param cards the cards of its rounds
     * @return the figures of the last round that was planned
     */
    public static Progress of(Library library, JobRecord job, List<Card> cards) {
        int last = -1;
        for (int i = 0; i < cards.size(); i++) {
            last = cards.get(i).items().isEmpty() ? last : i;
        }
        return last < 0 ? new Progress(0, 0, Optional.empty())
                : of(library, job.getRounds().get(last), CardLines.of(library, cards.get(last), job.getRounds().get(last)));
    }

    private static Progress of(Library library, Round round, List<CardLine> lines) {
        var tasks = lines.stream().filter(Task.class::isInstance).map(Task.class::cast).toList();
        var left = open(library, round, tasks);
        return new Progress(tasks.size() - left.size(), tasks.size(), left.stream().findFirst().map(Task::title));
    }

    static List<Task> open(Library library, Round round, List<Task> tasks) {
        var left = new ArrayList<Task>();
        for (var task : tasks) {
            if (round.getDone().stream().filter(done -> isFor(library, done, task)).count() <= task.before()) {
                left.add(task);
            }
        }
        return left;
    }

    private static boolean isFor(Library library, DoneWork done, Task task) {
        EObject subject = task.part() == Part.STRIP ? done.getOpened() : task.part() == Part.REFIT ? done.getClosed()
                : done.getProcedure();
        return library.addressOf(subject).filter(task.place()::equals).isPresent();
    }
}
