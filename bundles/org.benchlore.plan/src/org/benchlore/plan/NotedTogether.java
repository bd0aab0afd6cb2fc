// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.benchlore.model.Addition;
import org.benchlore.model.FieldNote;
import org.benchlore.model.Kind;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Row;

/**
 * What notes know of works that are planned as whole jobs: that one takes minutes while another is open. A plan cannot reckon
 * with it, since nobody has written down what they share; whoever makes the price can.
 */
final class NotedTogether {

    private static final Set<String> SPENT = Set.of("RULED_OUT", "SUPERSEDED");

    private final PlanBook book;

    NotedTogether(PlanBook book) {
        this.book = book;
    }

    /**
     * Says it.
     *
     * @param whole works that are planned as whole jobs
     * @param all ids of all that is planned
     * @return a sentence for each pair, by title of the note
     */
    List<String> remarks(List<PlanItem> whole, Set<String> all) {
        if (whole.isEmpty() || all.size() < 2) {
            return List.of();
        }
        var said = new TreeSet<String>();
        notes().forEach(note -> note.getAddWhileDoing().stream().filter(addition -> addition.getExtra() != null)
                .forEach(addition -> whole.stream().filter(item -> isWork(addition, item) && isBeside(addition, item, all))
                        .forEach(item -> said.add("'" + ElementTitle.of(note) + "' says that '" + item.title() + "' takes "
                                + addition.getExtra() + " more with the other work open; here it has its whole "
                                + item.minutes().usual() + " min."))));
        return List.copyOf(said);
    }

    private Stream<FieldNote> notes() {
        var machine = book.library().addressOf(book.machine());
        return book.library().catalogue().rows(Kind.NOTE).filter(row -> !SPENT.contains(row.status()))
                .filter(row -> machine.filter(row.machines()::contains).isPresent()).map(Row::id)
                .flatMap(id -> book.library().top(id).stream()).filter(FieldNote.class::isInstance).map(FieldNote.class::cast);
    }

    private boolean isWork(Addition addition, PlanItem item) {
        return addition.getWork() != null && book.ids(List.of(addition.getWork())).contains(item.id());
    }

    private boolean isBeside(Addition addition, PlanItem item, Set<String> all) {
        return addition.getWhileDoing() != null && book.ids(List.of(addition.getWhileDoing())).stream().anyMatch(id -> !id.equals(item.id()) && all.contains(id));
    }
}
